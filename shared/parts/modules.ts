import type * as z from "zod";
import { Module } from "../job/schema/battery.ts";
import { ironPhosphateModules } from "./modulesIronPhosphate.ts";
import { nickelModules } from "./modulesNickel.ts";
import { partOf } from "./part.ts";

export const ModulePart = partOf(Module);
export type ModulePart = z.infer<typeof ModulePart>;

/** The generic modules: nickel, then iron phosphate, reclaimed and new. */
export const modules: readonly ModulePart[] = [...nickelModules, ...ironPhosphateModules];
