import Papa from "papaparse";
import { expect } from "vitest";

export interface Csv {
  readonly names: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A table from the text of a CSV file, which must be one without fault. */
export function csvOf(text: string): Csv {
  const { data, errors } = Papa.parse<string[]>(text);
  expect(errors).toEqual([]);
  const [names = [], ...rows] = data;
  return { names, rows };
}
