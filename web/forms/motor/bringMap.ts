import { InputError } from "../../../shared/problems.ts";
import { openMotorMaps } from "../../../sim/index.ts";
import type { BroughtMap } from "../../fields/staging.ts";
import { fetchPart } from "../../worker/fetchPart.ts";

/** Far more than the largest map that the job file takes: 500 by 500 values of ten letters. */
const MOST_BYTES = 5_000_000;

/** A motor map from a file somebody chose or dropped: read, or the sentences that say why not. */
export async function bringMap(file: File): Promise<BroughtMap> {
  if (file.size > MOST_BYTES) {
    return {
      name: file.name,
      problems: [`${file.name}: found ${Math.round(file.size / 1e6)} MB, a motor map has less than 5`],
    };
  }
  return readMap(file.name, await file.text());
}

/** The same from the file's text. */
export async function readMap(name: string, text: string): Promise<BroughtMap> {
  try {
    const { readMotorMap, lossTableOf } = await fetchPart(openMotorMaps);
    const map = readMotorMap(name, text);
    return { name, map, loss: lossTableOf(map) };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { name, problems: error.problems.map(({ where, message }) => `${where}: ${message}`) };
  }
}
