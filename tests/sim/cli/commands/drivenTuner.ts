import { join } from "node:path";
import { expect } from "vitest";
import { changedDemoFile } from "../../../support/changedDemo.ts";
import { runCommand } from "../../../support/runCommand.ts";

export const root = join(import.meta.dirname, "../../../..");

export const tuner = join(root, "shared/demos/piano-tuner.bellhousing.json");

/** The same without anything unknown, where the verdict is not what a test is about: it drives each pack once. */
export const quick = () => changedDemoFile({ origins: {} });

interface Band {
  value: number;
  low: number;
  high: number;
}

interface Driven {
  job: string;
  trace: Record<string, number | string>;
  isComparable: boolean;
  candidates: {
    name: string;
    pack: Record<string, number>;
    testMass_kg: number;
    battery_Whpkm: number;
    wall_Whpkm: number;
    distance_km: number;
    missed_km: number;
    rangeEnd: string;
    soc: Record<string, number>;
    ledger_Wh: Record<string, number>;
    limited_s: Record<string, number>;
    peak: Record<string, number>;
    findings: { kind: string; sentence: string }[];
  }[];
  enough: { pack: string | null; sentences: string[]; packs: Record<string, unknown>[] };
  answer: {
    headline: string;
    sentence: string;
    recommended: string | null;
    packs: { verdict: string; left_km: Record<"new" | "winter" | "tenYearsWinter", Band> }[];
  };
}

export async function driven(...words: readonly string[]): Promise<Driven> {
  const { code, out, err } = await runCommand("drive", ...words, "--json");
  expect({ code, err }).toEqual({ code: 0, err: "" });
  return JSON.parse(out) as Driven;
}
