import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { get, request, type Server } from "node:http";
import { join } from "node:path";
import { expect, it, onTestFinished } from "vitest";
import { listen } from "../../../../sim/cli/serving/listen.ts";
import { staticServer } from "../../../../sim/cli/serving/staticServer.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";

interface Answer {
  readonly status: number | undefined;
  readonly type: string | undefined;
  readonly policy: string;
  readonly location: string | undefined;
  readonly body: string;
}

async function served(): Promise<{ server: Server; port: number }> {
  const folder = emptyFolder();
  const root = join(folder, "web");
  mkdirSync(join(root, "assets"), { recursive: true });
  writeFileSync(join(folder, "secret.txt"), "secret");
  writeFileSync(join(root, "index.html"), "<p>notebook</p>");
  writeFileSync(join(root, "assets", "a b.js"), "1");
  writeFileSync(join(root, "k.wasm"), "2");
  symlinkSync(join(folder, "secret.txt"), join(root, "link.txt"));
  const server = staticServer(root);
  const port = await listen(server, 0);
  onTestFinished(() => {
    server.closeAllConnections();
    server.close();
  });
  return { server, port };
}

function ask(port: number, path: string, method = "GET", host = `127.0.0.1:${port}`): Promise<Answer> {
  return new Promise((resolve, reject) => {
    request({ host: "127.0.0.1", port, path, method, headers: { host } }, (response) => {
      let body = "";
      response.setEncoding("utf8");
      response.on("data", (piece: string) => {
        body += piece;
      });
      response.on("end", () => {
        const { statusCode, headers } = response;
        const policy = String(headers["content-security-policy"]);
        resolve({ status: statusCode, type: headers["content-type"], policy, location: headers.location, body });
      });
    })
      .on("error", reject)
      .end();
  });
}

it.each([
  ["/", "text/html; charset=utf-8", "<p>notebook</p>"],
  ["/index.html?x=1#y", "text/html; charset=utf-8", "<p>notebook</p>"],
  ["/assets/a%20b.js", "text/javascript; charset=utf-8", "1"],
  ["/k.wasm", "application/wasm", "2"],
])("serves %s as %s", async (path, type, body) => {
  const { port } = await served();
  expect(await ask(port, path)).toMatchObject({ status: 200, type, body });
});

it.each([
  "/../secret.txt",
  "/%2e%2e/secret.txt",
  "/..%2fsecret.txt",
  "/assets/../../secret.txt",
  "/link.txt",
  "/none.html",
  "/assets",
  "/%00",
  "/%",
  "//secret.txt",
])("finds nothing at %s", async (path) => {
  const { port } = await served();
  expect(await ask(port, path)).toMatchObject({ status: 404, body: "there is no such file here\n" });
});

it("lets the page load from nowhere else, in every answer", async () => {
  const { port } = await served();
  for (const path of ["/", "/none"]) {
    const { policy } = await ask(port, path);
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("connect-src 'self'");
    expect(policy).not.toMatch(/https?:|\*/);
  }
});

it("answers to names of this machine only", async () => {
  const { port } = await served();
  expect((await ask(port, "/", "GET", "somewhere.example")).status).toBe(403);
});

it.each(["localhost", "[::1]"])(
  "sends a browser that asks %s to the one address that jobs are kept under",
  async (name) => {
    const { port } = await served();
    const answer = await ask(port, "/a%20b?c=1", "GET", `${name}:${port}`);
    expect(answer).toMatchObject({ status: 308, location: `http://127.0.0.1:${port}/a%20b?c=1` });
    expect((await ask(port, "//somewhere.example/", "GET", name)).location).toBe(
      "http://127.0.0.1//somewhere.example/",
    );
  },
);

it("answers a HEAD without a body and refuses whatever would write", async () => {
  const { port } = await served();
  expect(await ask(port, "/", "HEAD")).toMatchObject({ status: 200, body: "" });
  expect((await ask(port, "/", "POST")).status).toBe(405);
});

it("listens on the loopback address alone, and a taken port is told", async () => {
  const { server, port } = await served();
  expect(server.address()).toMatchObject({ address: "127.0.0.1", port });
  await expect(listen(staticServer(emptyFolder()), port)).rejects.toMatchObject({ code: "EADDRINUSE", port });
});

it("goes on after a reader that left half-way", async () => {
  const { port } = await served();
  await new Promise<void>((resolve) => {
    get({ host: "127.0.0.1", port, path: "/" }, (response) => {
      response.destroy();
      resolve();
    });
  });
  expect((await ask(port, "/")).status).toBe(200);
});
