import { createServer } from "node:http";
import { expect, it, onTestFinished } from "vitest";
import { listen } from "../../../../sim/cli/serving/listen.ts";

function server() {
  const made = createServer();
  onTestFinished(() => void made.close());
  return made;
}

it("takes any free port for 0, on this machine alone, and says which", async () => {
  const first = server();
  const port = await listen(first, 0);
  expect(port).toBeGreaterThan(0);
  expect(first.address()).toMatchObject({ address: "127.0.0.1", port });
});

it("refuses a port that is taken", async () => {
  const port = await listen(server(), 0);
  await expect(listen(server(), port)).rejects.toMatchObject({ code: "EADDRINUSE" });
});
