import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

// The notebook. How much script it may load is held by tests/browser/pageWeight.test.ts, so the bundler need not warn.
// Paths stay relative (`base`), so that the built folder works under any address.
export default defineConfig({
  root: "web",
  base: "./",
  build: { outDir: "../dist/web", emptyOutDir: true, target: "es2022", chunkSizeWarningLimit: 1500 },
  resolve: { alias: { stream: fileURLToPath(new URL("web/worker/noStream.ts", import.meta.url)) } },
  worker: { format: "es" },
  server: { host: "127.0.0.1" },
});
