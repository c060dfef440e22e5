import { charge } from "./charge.ts";
import { coastdown } from "./coastdown.ts";
import type { Command } from "./command.ts";
import { cycles } from "./cycles.ts";
import { drive } from "./drive.ts";
import { gears } from "./gears.ts";
import { hills } from "./hills.ts";
import { newJob } from "./new.ts";
import { regen } from "./regen.ts";
import { sheet } from "./sheet.ts";
import { trace } from "./trace.ts";
import { weigh } from "./weigh.ts";

/** Every command, in the order of `--help`. A new one is a file of its own and a line here. */
export const commands: readonly Command[] = [
  drive,
  sheet,
  gears,
  hills,
  regen,
  charge,
  weigh,
  coastdown,
  trace,
  cycles,
  newJob,
];
