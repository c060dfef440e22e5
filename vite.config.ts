import { defineConfig } from "vite";

// The notebook. Paths stay relative (`base`), so that the built folder works under any address.
export default defineConfig({
  root: "web",
  base: "./",
  build: { outDir: "../dist/web", emptyOutDir: true, target: "es2022" },
  worker: { format: "es" },
  server: { host: "127.0.0.1" },
});
