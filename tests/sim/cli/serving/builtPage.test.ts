import { mkdirSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";
import { isBuildDue } from "../../../../sim/cli/serving/builtPage.ts";
import { emptyFolder } from "../../../support/emptyFolder.ts";

/** A checkout whose sources are from second 1000 and whose page was built in second 2000. */
function checkout(): string {
  const root = emptyFolder();
  for (const folder of ["web/sections", "dist/web"]) mkdirSync(join(root, folder), { recursive: true });
  writeFileSync(join(root, "web/sections/car.ts"), "");
  writeFileSync(join(root, "dist/web/index.html"), "");
  for (const path of ["web/sections/car.ts", "web/sections", "web"]) utimesSync(join(root, path), 1000, 1000);
  utimesSync(join(root, "dist/web/index.html"), 2000, 2000);
  return root;
}

it("is not due where the page is newer than all it is made of", () => {
  expect(isBuildDue(checkout())).toBe(false);
});

it("is due after a source changed, came or went", () => {
  const changed = checkout();
  utimesSync(join(changed, "web/sections/car.ts"), 3000, 3000);
  expect(isBuildDue(changed)).toBe(true);
  const gone = checkout();
  rmSync(join(gone, "web/sections/car.ts"));
  expect(isBuildDue(gone)).toBe(true);
});

it("is due where nothing was built yet", () => {
  const root = checkout();
  rmSync(join(root, "dist"), { recursive: true });
  expect(isBuildDue(root)).toBe(true);
});
