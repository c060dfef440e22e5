import { once } from "node:events";
import { connect } from "node:net";
import { commands, type Driver } from "./driver.ts";

type Reply = [1, number, { error: string; message: string } | null, unknown];

/**
 * Speaks to Firefox as its own driver does: the commands of WebDriver with the parameters of WebDriver, each as JSON with its length
 * in bytes and a colon before it, on a socket of this machine. That driver itself is not among the packages a system has.
 */
export async function marionetteDriver(port: number): Promise<Driver> {
  const socket = connect(port, "127.0.0.1");
  await once(socket, "connect");
  const waiting = new Map<number, { resolve(value: unknown): void; reject(error: Error): void }>();
  let unread = Buffer.alloc(0);
  let last = 0;

  const onMessage = (message: unknown) => {
    if (!Array.isArray(message)) return; // the greeting
    const [, id, error, result] = message as Reply;
    const caller = waiting.get(id);
    waiting.delete(id);
    if (error) caller?.reject(new Error(`${error.error}, ${error.message}`));
    else caller?.resolve(result);
  };
  socket.on("data", (piece: Buffer) => {
    unread = Buffer.concat([unread, piece]);
    for (let colon = unread.indexOf(":"); colon > 0; colon = unread.indexOf(":")) {
      const end = colon + 1 + Number(unread.toString("utf8", 0, colon));
      if (unread.length < end) return;
      const text = unread.toString("utf8", colon + 1, end);
      unread = unread.subarray(end);
      onMessage(JSON.parse(text));
    }
  });
  const onEnd = () => {
    for (const { reject } of waiting.values()) reject(new Error("the browser has ended"));
    waiting.clear();
  };
  socket.on("error", onEnd).on("close", onEnd);

  const driver: Driver = {
    async send(command, parameters, id) {
      const text = JSON.stringify([
        0,
        ++last,
        `WebDriver:${commands[command].name}`,
        id ? { ...parameters, id } : parameters,
      ]);
      const reply = new Promise((resolve, reject) => waiting.set(last, { resolve, reject }));
      socket.write(`${Buffer.byteLength(text)}:${text}`);
      const result = (await reply) as { value?: unknown } | null;
      return result?.value;
    },
  };
  await driver.send("newSession", { strictFileInteractability: false });
  return driver;
}
