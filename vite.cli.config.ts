import { builtinModules } from "node:module";
import { defineConfig } from "vite";

// The command `bellhousing` as one file that needs no node_modules; the shebang of main.ts is kept.
export default defineConfig({
  build: {
    ssr: "sim/cli/main.ts",
    outDir: "dist/cli",
    emptyOutDir: true,
    target: "node20",
    rollupOptions: { output: { entryFileNames: "main.mjs" } },
  },
  ssr: { noExternal: true, external: [...builtinModules] },
});
