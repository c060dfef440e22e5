import { commands, type Driver } from "./driver.ts";

/** Opens a session at a driver that serves WebDriver over HTTP, and speaks to that. */
export async function httpDriver(url: string, alwaysMatch: Readonly<Record<string, unknown>>): Promise<Driver> {
  let session = "/session";
  const driver: Driver = {
    async send(command, parameters, id = "") {
      const { method, path } = commands[command];
      const response = await fetch(`${url}${session}${path.replace("{id}", id)}`, {
        method,
        ...(method === "POST" && { body: JSON.stringify(parameters) }),
      });
      const { value } = (await response.json()) as { value: { error?: string; message?: string } };
      if (!response.ok) throw new Error(`${command}: ${value.error}, ${value.message}`);
      return value;
    },
  };
  const { sessionId } = (await driver.send("newSession", { capabilities: { alwaysMatch } })) as { sessionId: string };
  session = `/session/${sessionId}`;
  return driver;
}
