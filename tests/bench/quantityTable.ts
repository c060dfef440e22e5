import type { QuantityKind } from "../../shared/quantity/kinds/kinds.ts";
import { readQuantity } from "../../shared/quantity.ts";

// Forty quantities as a workshop writes them, and how each is understood: `npx tsx tests/bench/quantityTable.ts`.
const typed: readonly (readonly [QuantityKind, string])[] = [
  ["mass", "1480"],
  ["mass", "1,480 kg"],
  ["mass", "14 1/4 cwt"],
  ["mass", "14 cwt (100 lb)"],
  ["mass", "14 cwt 2 qr 10 lb"],
  ["mass", "2 t"],
  ["mass", "1480 ± 10 kg"],
  ["mass", "1.480 kg"],
  ["speed", "52 mph"],
  ["gradient", "1 in 6"],
  ["gradient", "14%"],
  ["gradient", "8 deg"],
  ["gradient", "25 deg"],
  ["gradient", "14"],
  ["gradient", "0.14 %"],
  ["gradient", "1 in 0"],
  ["finalDrive", "9/41"],
  ["finalDrive", "41/9"],
  ["finalDrive", "4,56"],
  ["gearRatio", "342"],
  ["gearRatio", "0.82"],
  ["torque", "122 lb ft"],
  ["power", "60 bhp"],
  ["power", "82 PS"],
  ["length", "5 1/2 in"],
  ["length", "3 ft 6 in"],
  ["wheelRadius", "5.20-13"],
  ["wheelRadius", "165 R 15"],
  ["wheelRadius", "175/70 R13"],
  ["wheelRadius", "520-13"],
  ["circumference", "1.85 m"],
  ["pressure", "30 psi"],
  ["pressure", "30"],
  ["fuelUse", "26 mpg"],
  ["fuelUse", "14 l/100 km"],
  ["fraction", "112 %"],
  ["temperature", "300 degC"],
  ["resistance", "0.0005 ohm"],
  ["distance", "1,480 km"],
  ["charge", "unknown"],
];

const rows = typed.map(([kind, text]) => {
  const reading = readQuantity(kind, text);
  if (!reading.ok) return [kind, text, "refused", reading.problem.message];
  if (reading.unknown) return [kind, text, "unknown", reading.understood];
  const asked = reading.question ? `asked: ${reading.question.choices.map((choice) => choice.label).join(" or ")}` : "";
  return [kind, text, reading.understood, [...reading.notes, asked].filter((said) => said !== "").join("; ")];
});
console.log("| kind | typed | understood | said beside it |\n| --- | --- | --- | --- |");
for (const row of rows) console.log(`| ${row.join(" | ")} |`);
console.log(`\n${rows.length} quantities`);
