import type { Command } from "./command.ts";
import { charge } from "./commands/charge.ts";
import { coastdown } from "./commands/coastdown.ts";
import { costs } from "./commands/costs.ts";
import { currents } from "./commands/currents.ts";
import { cycles } from "./commands/cycles.ts";
import { drive } from "./commands/drive.ts";
import { gears } from "./commands/gears.ts";
import { hills } from "./commands/hills.ts";
import { measure } from "./commands/measure.ts";
import { newJob } from "./commands/new.ts";
import { packs } from "./commands/packs.ts";
import { predicted } from "./commands/predicted.ts";
import { regen } from "./commands/regen.ts";
import { settings } from "./commands/settings.ts";
import { sheet } from "./commands/sheet.ts";
import { torque } from "./commands/torque.ts";
import { trace } from "./commands/trace.ts";
import { vary } from "./commands/vary.ts";
import { week } from "./commands/week.ts";
import { weigh } from "./commands/weigh.ts";
import { year } from "./commands/year.ts";

/** Every command, in the order of `--help`. A new one is a file of its own and a line here. */
export const commands: readonly Command[] = [
  drive,
  sheet,
  gears,
  torque,
  hills,
  regen,
  packs,
  vary,
  year,
  week,
  charge,
  costs,
  currents,
  settings,
  predicted,
  weigh,
  coastdown,
  measure,
  trace,
  cycles,
  newJob,
];
