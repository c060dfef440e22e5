import { expect, it } from "vitest";
import { runTool } from "../support/runTool.ts";

it("has no file, export or dependency that nothing uses, and none that is used and not listed", async () => {
  // Its configuration stands in package.json.
  const { code, said } = await runTool("node_modules/knip/bin/knip.js", ["--no-progress"]);
  expect({ code, said: said.trim() }).toEqual({ code: 0, said: "" });
});
