import type { Server } from "node:http";

/** The port a server came to listen on, loopback only. Port 0 takes any free one; a taken port rejects with EADDRINUSE. */
export function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.off("error", reject);
      const address = server.address();
      resolve(typeof address === "object" && address ? address.port : port);
    });
  });
}
