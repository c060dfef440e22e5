// Run by `npm ci` (`prepare`): has git call the hooks of this folder. Quiet, and never a reason for an install to fail:
// outside a git work tree, without git, or where somebody set hooks of their own, nothing is done.
import { spawnSync } from "node:child_process";
import { realpathSync } from "node:fs";
import { join } from "node:path";

const root = join(import.meta.dirname, "../..");
const git = (...args) => spawnSync("git", args, { cwd: root, encoding: "utf8" });

try {
  const top = git("rev-parse", "--show-toplevel");
  const isOurs = top.status === 0 && realpathSync(top.stdout.trim()) === realpathSync(root);
  const before = git("config", "--get", "core.hooksPath");
  if (isOurs && before.status === 1) git("config", "core.hooksPath", ".ci/hooks");
} catch {
  // No hook then; `npm test` checks the same.
}
