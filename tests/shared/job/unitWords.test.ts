import { expect, it } from "vitest";
import { unitSuffixAt, unitWords } from "../../../shared/job/unitWords.ts";

it.each([
  [["roads", 0, "speed_kmh", 12], "kmh", " km/h"],
  [["vehicle", "kerb_kg"], "kg", " kg"],
  [["charger", "efficiency_frac"], "frac", ""],
  [["vehicle", "roadLoad", "f2_Npkmh2"], "Npkmh2", " N per (km/h)2"],
  [["packs", 0, "name"], undefined, ""],
  [["packs", 0, "snake_case"], undefined, ""],
])("of %j is %s", (path, suffix, words) => {
  expect(unitSuffixAt(path)).toBe(suffix);
  expect(unitWords(path)).toBe(words);
});
