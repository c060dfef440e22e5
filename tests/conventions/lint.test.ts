import { expect, it } from "vitest";
import { runTool } from "../support/runTool.ts";

it("finds nothing to mend in lint and format", async () => {
  const { code, said } = await runTool("node_modules/@biomejs/biome/bin/biome", [
    "ci",
    "--error-on-warnings",
    "--colors=off",
    "--max-diagnostics=50",
  ]);
  expect(code, said).toBe(0);
});
