import { createHash } from "node:crypto";
import { fileURLToPath } from "node:url";
import { defineConfig, mergeConfig, type Plugin } from "vite";
import { viteSingleFile } from "vite-plugin-singlefile";
import served from "./vite.config.ts";

const name = "bellhousing.html";
const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

// The notebook as one file that needs no server: script, look, typeface, cycles and workers lie inside it.
export default defineConfig(
  mergeConfig(served, {
    build: { outDir: "../dist", emptyOutDir: false, modulePreload: false, reportCompressedSize: false },
    resolve: { alias: [{ find: /^.*\/workersBeside\.ts$/, replacement: here("web/worker/workersInside.ts") }] },
    // A module worker does not start from a page on disk, and a classic one cannot fetch pieces of itself.
    worker: { format: "iife", rolldownOptions: { output: { codeSplitting: false } } },
    plugins: [viteSingleFile(), closed()],
  }),
);

/**
 * Names the page, and has it carry the policy that a server would send: it may run the scripts it was built with, known by
 * their digests, show what is inside it, and ask no host for anything.
 */
function closed(): Plugin {
  return {
    name: "closed",
    enforce: "post",
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const page = bundle["index.html"];
        const strays = Object.keys(bundle).filter((file) => file !== "index.html");
        if (page?.type !== "asset" || strays.length > 0)
          throw new Error(`the page is not in one file: beside it are ${strays.join(", ") || "no page"}`);
        const html = String(page.source);
        // After the character set, which has to stand in the first kilobyte.
        const source = html.replace(/<meta charset[^>]*>/, (charset) => `${charset}\n    ${policyOf(html)}`);
        delete bundle["index.html"];
        this.emitFile({ type: "asset", fileName: name, source });
      },
    },
  };
}

function policyOf(html: string): string {
  const scripts = [...html.matchAll(/<script\b[^>]*>([\s\S]*?)<\/script>/g)];
  const digests = scripts.map(
    ([, text]) =>
      `'sha256-${createHash("sha256")
        .update(text ?? "")
        .digest("base64")}'`,
  );
  const policy = [
    "default-src 'none'",
    `script-src ${digests.join(" ")}`,
    "style-src 'unsafe-inline'",
    "font-src data:",
    "img-src data: blob:",
    "worker-src blob: data:",
    "connect-src data: blob:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
  return `<meta http-equiv="Content-Security-Policy" content="${policy}" />`;
}
