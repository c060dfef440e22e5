import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { build } from "vite";

export interface ServedPage {
  readonly url: string;
  close(): Promise<void>;
}

/** The script of the test page of the storage of jobs, in one piece. */
export async function bundleStorePage(): Promise<string> {
  const nodeEnvBefore = process.env["NODE_ENV"];
  process.env["NODE_ENV"] = "production";
  const built = await build({
    configFile: false,
    mode: "production",
    logLevel: "warn",
    build: {
      write: false,
      target: "es2022",
      lib: { entry: join(import.meta.dirname, "storePage.ts"), formats: ["es"] },
    },
  });
  if (nodeEnvBefore !== undefined) process.env["NODE_ENV"] = nodeEnvBefore;
  const outputs = (Array.isArray(built) ? built : [built]).flatMap((each) => ("output" in each ? each.output : []));
  return outputs.map((file) => (file.type === "chunk" ? file.code : "")).join("\n");
}

/** Serves the test page of the storage of jobs on a free port of this machine. */
export async function serveStorePage(): Promise<ServedPage> {
  const script = await bundleStorePage();
  const page = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Jobs</title>
    <style>.unseen { position: absolute; clip-path: inset(50%); }</style></head>
    <body><main></main><script type="module" src="/page.js"></script></body></html>`;
  const server = createServer((request, response) => {
    const isScript = request.url === "/page.js";
    const isPage = request.url === "/";
    response.writeHead(isScript || isPage ? 200 : 404, {
      // As strict as the notebook's own, so that nothing here works only because a page may do more.
      "content-security-policy": "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'",
      "content-type": isScript ? "text/javascript" : "text/html; charset=utf-8",
    });
    response.end(isScript ? script : isPage ? page : "<!doctype html><title>nothing here</title>");
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
