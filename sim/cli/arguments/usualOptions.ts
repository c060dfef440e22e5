import type { CommandOption } from "../command.ts";

// What many commands take, in the same words everywhere.

export const forProgram: CommandOption = { type: "boolean", help: "for a program: one object, units in the keys" };

export const overRoad: CommandOption = {
  type: "string",
  value: "ID|FILE",
  help: "the road, as drive takes it; else the job's",
};

/** Read by `packIndexOf`. */
export const withPack: CommandOption = {
  type: "string",
  value: "NAME",
  help: "with this pack aboard; else the heaviest",
};

export const onlyPack: CommandOption = { type: "string", value: "NAME", help: "this pack alone; else all" };
