import { createReadStream, realpathSync, statSync } from "node:fs";
import { createServer, type Server, type ServerResponse } from "node:http";
import { extname, join, sep } from "node:path";

const mimeTypes: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".mjs": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".map": "application/json; charset=utf-8",
  ".csv": "text/csv; charset=utf-8",
  ".txt": "text/plain; charset=utf-8",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff2": "font/woff2",
  ".wasm": "application/wasm",
};

/** The page may fetch from nowhere but here; this makes the browser hold it to that. */
const contentSecurityPolicy = [
  "default-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self' 'unsafe-inline'",
  "worker-src 'self' blob:",
  "connect-src 'self'",
  "img-src 'self' data: blob:",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join("; ");

/**
 * A server of the files under one folder, and of nothing outside it: a path that climbs out, by dots, by escapes or by a
 * link, is answered as if it were not there. Answers GET and HEAD only, and only to a host name of this machine, so that
 * no other site can reach it by pointing its own name here. The caller makes it listen.
 *
 * Our own: refusing other hosts, one address for the browser's jobs and no link out would stand round a package too, which would take
 * over some twenty lines.
 */
export function staticServer(folder: string): Server {
  const root = realpathSync(folder);
  return createServer((request, response) => {
    response.setHeader("Content-Security-Policy", contentSecurityPolicy);
    response.setHeader("X-Content-Type-Options", "nosniff");
    response.setHeader("Referrer-Policy", "no-referrer");
    const { host } = request.headers;
    if (!isLoopbackName(host)) return refuse(response, 403, "this server answers to 127.0.0.1 only");
    if (!host.startsWith("127.0.0.1")) {
      // A browser keeps jobs per address: under another name of the same machine they would seem lost.
      const [, port = ""] = /(:\d+)$/.exec(host) ?? [];
      response.setHeader("Location", `http://127.0.0.1${port}${request.url?.startsWith("/") ? request.url : "/"}`);
      return refuse(response, 308, "the notebook is at 127.0.0.1");
    }
    if (request.method !== "GET" && request.method !== "HEAD") {
      response.setHeader("Allow", "GET, HEAD");
      return refuse(response, 405, "only reading is possible here");
    }
    const file = fileUnder(root, request.url ?? "/");
    if (file === undefined) return refuse(response, 404, "there is no such file here");
    response.setHeader("Content-Type", mimeTypes[extname(file.path)] ?? "application/octet-stream");
    response.setHeader("Content-Length", file.size);
    // Built files under assets/ bear a digest in their name and never change; everything else is asked for anew.
    const isDigested = file.path.startsWith(`${join(root, "assets")}${sep}`);
    response.setHeader("Cache-Control", isDigested ? "public, max-age=31536000, immutable" : "no-cache");
    if (request.method === "HEAD") return void response.end();
    createReadStream(file.path)
      .on("error", () => response.destroy())
      .pipe(response);
  });
}

function isLoopbackName(host: string | undefined): host is string {
  return host !== undefined && /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/.test(host);
}

function fileUnder(root: string, url: string): { path: string; size: number } | undefined {
  try {
    const name = decodeURIComponent(url.split(/[?#]/, 1)[0] ?? "/");
    if (name.includes("\0")) return undefined;
    const path = realpathSync(join(root, name.endsWith("/") ? `${name}index.html` : name));
    if (!path.startsWith(root + sep)) return undefined;
    const found = statSync(path);
    return found.isFile() ? { path, size: found.size } : undefined;
  } catch {
    return undefined; // no such file, or a name that is no name
  }
}

function refuse(response: ServerResponse, status: number, sentence: string): void {
  response.statusCode = status;
  response.setHeader("Content-Type", "text/plain; charset=utf-8");
  response.end(`${sentence}\n`);
}
