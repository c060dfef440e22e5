import { readFileSync } from "node:fs";

/** Speeds of a standard cycle in m/s, one a second. */
export function cycleSpeeds_mps(id: string): number[] {
  const [header, ...lines] = readFileSync(new URL(`../../cycles/${id}.csv`, import.meta.url), "utf8")
    .trim()
    .split(/\r?\n/);
  const factor = header.includes("mph") ? 0.44704 : 1 / 3.6;
  return lines.map((line) => Number(line.split(",")[1]) * factor);
}
