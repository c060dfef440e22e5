import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type QuantityKind, quantityKinds } from "../../shared/quantity/kinds/kinds.ts";
import type { QuantityOptions, Refused, Understood } from "../../shared/quantity/reading/reading.ts";
import { readQuantity } from "../../shared/quantity.ts";
import { unitSuffixes } from "../../shared/units.ts";

function understood(kind: QuantityKind, text: string, options?: QuantityOptions): Understood {
  const reading = readQuantity(kind, text, options);
  if (!reading.ok || reading.unknown) throw new Error(`${text}: ${JSON.stringify(reading)}`);
  return reading;
}

function refused(kind: QuantityKind, text: string, options?: QuantityOptions): Refused {
  const reading = readQuantity(kind, text, options);
  if (reading.ok) throw new Error(`${text}: ${JSON.stringify(reading)}`);
  return reading;
}

const kinds = Object.keys(quantityKinds) as QuantityKind[];

describe("what was understood", () => {
  it.each<[QuantityKind, string, QuantityOptions, string]>([
    ["distance", "30 km", { units: "british" }, "30 km = 18.64 miles"],
    ["distance", "19 miles", { units: "british" }, "19 miles"],
    ["mass", "14 1/4 cwt", { units: "british" }, "14 1/4 cwt = 1596 lb"],
    ["mass", "1480 ± 10 kg", { units: "british" }, "1480 ± 10 kg = 3263 ± 22 lb"],
    ["temperature", "20 ± 5 °C", { units: "american" }, "20 ± 5 °C = 68 ± 9 °F"],
    ["finalDrive", "9/41", { units: "british" }, "9/41 = 4.56"],
  ])("of %s %s is repeated in the reader's own units", (kind, text, options, words) => {
    expect(understood(kind, text, options).understood).toBe(words);
  });

  it("is not repeated where it stands there already in the reader's units, and so are the bounds", () => {
    expect(understood("distance", "19 miles", { units: "british", bareUnit: "miles" }).isAsTyped).toBe(true);
    expect(understood("distance", "30 km", { units: "british", bareUnit: "miles" }).isAsTyped).toBe(false);
    expect(refused("mass", "-4", { units: "british", bareUnit: "lb", min: 0, max: 1000 }).problem.message).toBe(
      "-4 lb is not possible (0 to 2205 lb)",
    );
  });
});

describe("what a workshop writes", () => {
  // expected values by hand from the definitions of the units, to the digits given
  it.each<[QuantityKind, string, number, string]>([
    ["mass", "1480", 1480, "1480 = 1480 kg"],
    ["mass", "1,480 kg", 1480, "1,480 kg = 1480 kg"],
    ["mass", "14 1/4 cwt", 723.9334, "14 1/4 cwt = 724 kg"],
    ["mass", "14¼ cwt", 723.9334, "14¼ cwt = 724 kg"],
    ["mass", "14.25cwt", 723.9334, "14.25cwt = 724 kg"],
    ["mass", "2 t", 2000, "2 t = 2000 kg"],
    ["mass", "1\u00a0480\u00a0kg", 1480, "1\u00a0480\u00a0kg = 1480 kg"],
    ["mass", "14 cwt 2 qr 10 lb", 741.16993, "14 cwt 2 qr 10 lb = 741 kg"],
    ["speed", "52 mph", 83.685888, "52 mph = 83.7 km/h"],
    ["gradient", "1 in 6", 0.1666667, "1 in 6 = 16.7 % (rise over run)"],
    ["gradient", "1:6", 0.1666667, "1:6 = 16.7 % (rise over run)"],
    ["gradient", "14%", 0.14, "14% = 1 in 7.14 (rise over run)"],
    ["gradient", "8 deg", 0.1405408, "8 deg = 14.1 % (rise over run)"],
    ["gradient", "8°", 0.1405408, "8° = 14.1 % (rise over run)"],
    ["gradient", "−5 %", -0.05, "−5 % = 1 in 20 down (rise over run)"],
    ["gradient", "1 in 10 downhill", -0.1, "1 in 10 downhill = -10 % (rise over run)"],
    ["finalDrive", "9/41", 4.5555556, "9/41 = 4.56"],
    ["finalDrive", "41/9", 4.5555556, "41/9 = 4.56"],
    ["finalDrive", "9 × 41", 4.5555556, "9 × 41 = 4.56"],
    ["finalDrive", "4.56", 4.56, "4.56"],
    ["gearRatio", "3.42:1", 3.42, "3.42:1 = 3.42"],
    ["gearRatio", "0.82", 0.82, "0.82"],
    ["torque", "122 lb ft", 165.40979, "122 lb ft = 165 Nm"],
    ["torque", "122 ft·lbf", 165.40979, "122 ft·lbf = 165 Nm"],
    ["power", "60 bhp", 44.741992, "60 bhp = 44.7 kW"],
    ["electricPower", "60 bhp", 44.741992, "60 bhp = 44.7 kW"],
    ["power", "82 PS", 60.310897, "82 PS = 60.3 kW"],
    ["length", "5 1/2 in", 139.7, "5 1/2 in = 140 mm"],
    ["length", "5½″", 139.7, "5½″ = 140 mm"],
    ["length", "3 ft 6 in", 1066.8, "3 ft 6 in = 1070 mm"],
    ["wheelRadius", "11 in", 279.4, "11 in = loaded radius 279 mm, 1.76 m a turn"],
    ["wheelRadius", "1.85 m round", 294.43664, "1.85 m round = loaded radius 294 mm, 1.85 m a turn"],
    ["wheelRadius", "860 revs per mile", 297.83146, "860 revs per mile = loaded radius 298 mm, 1.87 m a turn"],
    ["circumference", "1.85 m", 1850, "1.85 m = 1850 mm"],
    ["pressure", "30 psi", 2.0684272, "30 psi = 2.07 bar"],
    ["fuelUse", "26 mpg", 10.864651, "26 mpg = 10.9 l/100 km"],
    ["fuelUse", "14 l/100 km", 14, "14 l/100 km"],
    ["fuelUse", "14 litres per 100 km", 14, "14 litres per 100 km = 14 l/100 km"],
    ["energyUse", "4 mi/kWh", 155.3428, "4 mi/kWh = 155 Wh/km"],
    ["temperature", "68 °F", 20, "68 °F = 20 °C"],
    ["temperature", "minus 5", -5, "minus 5 = -5 °C"],
    ["resistance", "0.0005 Ω", 0.5, "0.0005 Ω = 0.5 mΩ"],
    ["charge", "52 Ah", 52, "52 Ah"],
    ["voltage", "96 V", 96, "96 V"],
    ["current", "−80 A", -80, "-80 A"],
    ["rotation", "5500 rev/min", 5500, "5500 rev/min = 5500 rpm"],
    ["inertia", "450 kg cm²", 0.045, "450 kg cm² = 0.045 kg m²"],
    ["duration", "1 h 20 min", 4800, "1 h 20 min = 4800 s"],
    ["duration", "1:02:03", 3723, "1:02:03 = 3723 s"],
    ["hours", "8:30", 8.5, "8:30 = 8.5 h"],
    ["area", "20 sq ft", 1.8580608, "20 sq ft = 1.86 m²"],
    ["angle", "8° 30'", 8.5, "8° 30' = 8.5 deg"],
    ["fraction", "85 %", 0.85, "85 %"],
    ["fraction", "3/4", 0.75, "3/4 = 75 %"],
    ["coefficient", "15 kg/t", 0.015, "15 kg/t = 0.015"],
    ["dragSquare", "0.55 N/(m/s)²", 0.04243827, "0.55 N/(m/s)² = 0.0424 N/(km/h)²"],
    ["count", "4", 4, "4"],
  ])("%s: %s", (kind, text, value, words) => {
    const reading = understood(kind, text);
    expect(Math.abs(reading.value / value - 1)).toBeLessThan(5e-7); // half the last of seven figures
    expect(reading.understood).toBe(words);
  });
});

describe("a decimal comma", () => {
  it.each<[QuantityKind, string, number]>([
    ["finalDrive", "4,56", 4.56],
    ["finalDrive", "4,111", 4.111], // 4111 is no final drive
    ["coefficient", "0,015", 0.015],
    ["length", "2,5 m", 2500],
    ["torque", "1.480,5 Nm", 1480.5],
  ])("is read where it can be nothing else: %s %s", (kind, text, value) => {
    const reading = understood(kind, text);
    expect(reading.value).toBeCloseTo(value, 9);
    expect(reading.notes).toContain("comma read as the decimal point");
  });

  it("is not seen in a mark of thousands", () => {
    expect(understood("mass", "1,480 kg").value).toBe(1480);
    expect(understood("mass", "1,480,000 g").value).toBe(1480);
    expect(understood("mass", "1,480.5 kg").value).toBe(1480.5);
    expect(understood("mass", "1,480 kg").question).toBeUndefined();
  });

  it("is asked about where both are possible", () => {
    const reading = understood("distance", "1,480 km");
    expect(reading.value).toBe(1480);
    expect(reading.question?.choices.map((choice) => choice.text)).toEqual(["1480 km", "1.48 km"]);
  });

  it("is asked about in the other direction: a point that may mark thousands", () => {
    expect(understood("mass", "1.480 kg").question?.choices.map((choice) => choice.text)).toEqual([
      "1.48 kg",
      "1480 kg",
    ]);
    expect(understood("mass", "1.480 t").question).toBeUndefined();
  });

  it("is refused where the digits make no number", () => {
    expect(refused("mass", "1,48,000 kg").problem.code).toBe("quantity-unreadable");
    expect(refused("mass", "1,2,3 kg").problem.code).toBe("quantity-unreadable");
  });
});

describe("slips", () => {
  it("asks which hundredweight, and knows both", () => {
    const reading = understood("mass", "14 1/4 cwt");
    expect(reading.question?.id).toBe("cwt");
    expect(reading.question?.choices.map((choice) => choice.remember)).toEqual([{ cwt: "112" }, { cwt: "100" }]);
    expect(understood("mass", "14 1/4 cwt", { cwt: "112" }).question).toBeUndefined();
    expect(understood("mass", "14 1/4 cwt", { cwt: "100" }).value).toBeCloseTo(14.25 * 45.359237, 9);
    expect(understood("mass", "14 1/4 cwt (100 lb)").value).toBeCloseTo(14.25 * 45.359237, 9);
    expect(understood("mass", "14 cwt (100 lb) 1 qr").value).toBeCloseTo(14.25 * 45.359237, 9);
  });

  it("asks which gallon, once", () => {
    expect(understood("fuelUse", "26 mpg").question?.id).toBe("gallon");
    expect(understood("fuelUse", "26 mpg", { gallon: "imperial" }).question).toBeUndefined();
    expect(understood("fuelUse", "26 mpg", { gallon: "us" }).value).toBeCloseTo(235.2145833 / 26, 7);
    expect(understood("fuelUse", "26 mpg (US)").value).toBeCloseTo(235.2145833 / 26, 7);
  });

  it("turns a final drive the right way up and says so, and leaves an overdrive alone", () => {
    expect(understood("finalDrive", "9/41").notes.join()).toContain("turned over, 41/9");
    expect(understood("finalDrive", "0.2195").value).toBeCloseTo(4.5558, 4);
    expect(understood("finalDrive", "41/9").notes).toEqual([]);
    expect(understood("gearRatio", "0.82").notes).toEqual([]);
    expect(refused("gearRatio", "9/41").likely).toBe("41/9");
  });

  it("asks whether a hill steeper than any road is in percent", () => {
    const reading = understood("gradient", "25 deg");
    expect(reading.question?.choices.map((choice) => choice.text)).toEqual(["25 deg", "25 %"]);
    expect(understood("gradient", "14 deg").question).toBeUndefined();
  });

  it("asks whether a percentage below one is the ratio", () => {
    expect(understood("gradient", "0.14 %").question?.choices[1]?.text).toBe("14 %");
    expect(understood("fraction", "0.92 %").question?.choices[1]?.text).toBe("92 %");
    expect(refused("fraction", "0.92 %", { min: 0.5 }).likely).toBe("92 %");
  });

  it("asks how a bare 14 is meant as a gradient, and reads a bare 0.14", () => {
    expect(refused("gradient", "14").question?.choices.map((choice) => choice.text)).toEqual([
      "14 %",
      "1 in 14",
      "14 deg",
    ]);
    expect(refused("gradient", "14").problem.code).toBe("quantity-ambiguous");
    expect(understood("gradient", "0.14").notes).toContain("read as rise over run");
  });

  it.each<[QuantityKind, string, string, QuantityOptions?]>([
    ["gearRatio", "342", "3.42"],
    ["finalDrive", "456", "4.56"],
    ["pressure", "30", "30 psi"],
    ["pressure", "30 bar", "30 psi"],
    ["pressure", "2.1 psi", "2.1 bar"],
    ["pressure", "210", "210 kPa"],
    ["gradient", "6 in 1", "1 in 6"],
    ["wheelRadius", "520-13", "5.20-13"],
    ["wheelRadius", "1.85", "1.85 m round"],
    ["wheelRadius", "28", "28 cm"],
    ["length", "15 ft", "15 in", { max: 3000 }],
    ["power", "45000", "45000 W"],
    ["charge", "52000", "52000 mAh"],
    ["mass", "1.48", "1.48 t", { min: 300, max: 3500 }],
    ["mass", "14800", "1480", { min: 300, max: 3500 }],
    ["energyUse", "4", "4 mi/kWh"],
    ["temperature", "300 degC", "300 K"],
  ])("%s: %s is refused, and was likely %s", (kind, text, likely, options) => {
    const reading = refused(kind, text, options);
    expect(reading.likely).toBe(likely);
    expect(reading.problem.message).toContain(`likely ${likely}`);
    expect(readQuantity(kind, likely, options).ok).toBe(true);
  });

  it.each<[QuantityKind, string, string, QuantityOptions?]>([
    ["gradient", "1 in 0", "quantity-range"],
    ["gradient", "60 deg", "quantity-range"],
    ["gradient", "95 deg", "quantity-range"],
    ["fraction", "1.1", "quantity-ambiguous"],
    ["fraction", "112 %", "quantity-range"],
    ["fraction", "-5 %", "quantity-range"],
    ["temperature", "300", "quantity-range"],
    ["count", "0", "quantity-range", { min: 1 }],
    ["count", "2.5", "quantity-range"],
    ["fuelUse", "26", "quantity-ambiguous"],
    ["fuelUse", "0 mpg", "quantity-range"],
    ["finalDrive", "41/0", "quantity-range"],
    ["mass", "heavy", "quantity-unreadable"],
    ["mass", "", "quantity-empty"],
    ["mass", "12 mph", "quantity-unit"],
    ["mass", "5² kg", "quantity-unit"],
    ["mass", "14 cwt (113 lb)", "quantity-unit"],
    ["resistance", "0.5 MΩ", "quantity-unit"],
    ["length", "3 ft 6", "quantity-unit"],
    ["mass", "953 -150", "quantity-unit"], // a difference, not a band that falls
    ["mass", "14 cwt + 20", "quantity-unit"], // 20 of what?
    ["area", "78 in x 90 in x 8.2", "quantity-range"],
    ["gearRatio", "0 and 43 teeth", "quantity-range"],
    ["duration", "8:30", "quantity-ambiguous"],
    ["duration", "1:75:00", "quantity-unreadable"],
    ["mass", "1 ".repeat(200), "quantity-unreadable"],
  ])("%s: %s is refused as %s", (kind, text, code, options) => {
    expect(refused(kind, text, options).problem.code).toBe(code);
  });

  it("names the field and what is allowed", () => {
    const { problem } = refused("gearRatio", "342", { label: "driveline.gears[2].gear_ratio" });
    expect(problem.where).toBe("driveline.gears[2].gear_ratio");
    expect(problem.message).toBe("342 is not possible (0.4 to 12); likely 3.42");
  });

  it.each([
    ["1.2", "1.2 is not possible (0.5 to 1)"],
    ["0.2", "0.2 is not possible (0.5 to 1)"],
    ["120", "120 = 120 % is not possible (50 to 100 %)"],
    ["1.2 %", "1.2 % is not possible (50 to 100 %)"],
  ])(
    "of an efficiency of %s says what is allowed in the unit typed, and offers nothing that is not",
    (text, message) => {
      const { problem, question } = refused("fraction", text, { min: 0.5, max: 1 });
      expect(problem).toMatchObject({ code: "quantity-range", message });
      expect(question).toBeUndefined();
    },
  );

  it("reads a bare number in the field's unit", () => {
    expect(understood("speed", "52", { bareUnit: "mph" }).value).toBeCloseTo(83.685888, 9);
    expect(understood("wheelRadius", "11", { bareUnit: "in" }).value).toBeCloseTo(279.4, 9);
    expect(understood("fuelUse", "26", { bareUnit: "mpg", gallon: "imperial" }).value).toBeCloseTo(10.864651, 6);
    expect(understood("speed", "52 km/h", { bareUnit: "mph" }).value).toBe(52);
  });

  it("keeps to a field's own bounds", () => {
    expect(understood("mass", "1480", { min: 300, max: 3500 }).value).toBe(1480);
    expect(refused("mass", "1480", { max: 1000 }).problem.message).toContain(
      "1480 kg is not possible (0.001 to 1000 kg)",
    );
  });
});

describe("not knowing", () => {
  it.each(["unknown", "Unknown", "?", "??", "don't know", "don’t know", "n/k"])(
    "%s is allowed in any field",
    (text) => {
      for (const kind of kinds) expect(readQuantity(kind, text)).toMatchObject({ ok: true, unknown: true });
    },
  );

  it("keeps how sure somebody is", () => {
    expect(understood("mass", "1480 ± 10 kg")).toMatchObject({ value: 1480, plusMinus: 10 });
    expect(understood("mass", "1480 kg +/- 2 %").plusMinus).toBeCloseTo(29.6, 9);
    expect(understood("mass", "about 1480 kg").notes).toContain("written as about");
  });
});

describe("what is worked out before it is read", () => {
  // by hand: 78 x 90 x 0.82 x 0.0254^2; 58 x 55 x 0.82 x 0.0254^2; 1.5 x 1.4 x 0.82; 40 + 35 + 18; 93 lb; 14 cwt and 20 lb
  it.each<[QuantityKind, string, number, string]>([
    ["area", "78 in x 90 in x 0.82", 3.713799, "78 in x 90 in x 0.82 = 3.71 m²"],
    ["area", "58 × 55 × 82 %", 1.6876095, "58 × 55 × 82 % = 1.69 m²"],
    ["area", "1.5 x 1.4 m x 0.82", 1.722, "1.5 x 1.4 m x 0.82 = 1.72 m²"],
    ["area", "1.75 m2 x 0.42", 0.735, "1.75 m2 x 0.42 = 0.735 m²"],
    ["mass", "40+35+18", 93, "40+35+18 = 93 kg"],
    ["mass", "40 + 35 + 18 lb", 42.184091, "40 + 35 + 18 lb = 42.18 kg"],
    ["mass", "14 cwt + 20 lb", 720.30468, "14 cwt + 20 lb = 720.3 kg"],
    ["mass", "2 x 75 kg + 40", 190, "2 x 75 kg + 40 = 190 kg"],
    ["finalDrive", "10 and 43 teeth", 4.3, "10 and 43 teeth = 4.3"],
    ["gearRatio", "10 and 43 teeth", 4.3, "10 and 43 teeth = 4.3"],
  ])("%s: %s", (kind, text, value, words) => {
    const reading = understood(kind, text);
    expect(Math.abs(reading.value / value - 1)).toBeLessThan(5e-7); // half the last of seven figures
    expect(reading.understood).toBe(words);
    expect(reading.isAsTyped).toBe(false);
  });

  it.each<[QuantityKind, string, number, number, string]>([
    ["coefficient", "0.50 to 0.65", 0.575, 0.075, "0.50 to 0.65 = 0.575 ± 0.075"],
    ["coefficient", "0.50–0.65", 0.575, 0.075, "0.50–0.65 = 0.575 ± 0.075"],
    ["speed", "60-65 mph", 100.584, 4.02336, "60-65 mph = 100.6 ± 4 km/h"],
    ["gradient", "10 to 14 %", 0.12, 0.02, "10 to 14 % = 12 ± 2 %"],
    ["gradient", "between 1 in 5 and 1 in 4", 0.225, 0.025, "between 1 in 5 and 1 in 4 = 22.5 ± 2.5 %"],
    ["temperature", "-5 to 5", 0, 5, "-5 to 5 = 0 ± 5 °C"],
    ["area", "2 m x 1 m x 0.80 to 0.85", 1.65, 0.05, "2 m x 1 m x 0.80 to 0.85 = 1.65 ± 0.05 m²"],
  ])("a band, %s: %s, is its middle and half its width", (kind, text, value, plusMinus, words) => {
    const reading = understood(kind, text);
    expect(reading.value).toBeCloseTo(value, 9);
    expect(reading.plusMinus).toBeCloseTo(plusMinus, 9);
    expect(reading.understood).toBe(words);
  });

  it("asks for the unit of two sides that make the front of a car in more than one, and names the one where there is one", () => {
    const choices = refused("area", "90 x 90").question?.choices.map(({ text }) => text);
    expect(choices).toEqual(["90 cm x 90 cm", "90 inches x 90 inches"]);
    expect(understood("area", "58 x 55 x 0.82").notes).toContain("sides read in inches");
  });

  it("asks which wheel drives where a gear could be either way round", () => {
    expect(understood("gearRatio", "20 and 30 teeth").question?.choices.map(({ text }) => text)).toEqual([
      "30/20",
      "20/30",
    ]);
    expect(understood("gearRatio", "10 and 43 teeth").question).toBeUndefined();
    expect(understood("gearRatio", "20/30").value).toBeCloseTo(2 / 3, 9);
  });

  it("takes a percentage far above 100 for one whose decimal point was forgotten", () => {
    expect(refused("fraction", "940 %")).toMatchObject({ likely: "94 %" });
    expect(refused("fraction", "940")).toMatchObject({ likely: "94" });
    expect(refused("fraction", "112 %").likely).toBeUndefined();
  });
});

describe("a text that is plainly its value", () => {
  it.each<[QuantityKind, string, boolean, QuantityOptions?]>([
    ["mass", "1371", true],
    ["mass", "1371 kg", true],
    ["mass", "1,371", false],
    ["mass", "1.371,6", false],
    ["finalDrive", "4,111", false],
    ["finalDrive", "9/41", false],
    ["finalDrive", "0.2195", false],
    ["speed", "52", true, { bareUnit: "mph" }],
    ["speed", "52 mph", false],
    ["fraction", "85", true],
    ["fraction", "0.85", false],
    ["gradient", "0.14", false],
  ])("%s %s: %s", (kind, text, isAsTyped, options) => {
    expect(understood(kind, text, options).isAsTyped).toBe(isAsTyped);
  });
});

describe("any text at all", () => {
  const pieces = [
    ..."0123456789.,/-+ ±%°'\"x:()²½",
    " in ",
    " kg",
    " cwt",
    " lb ft",
    " mph",
    "mpg",
    " deg",
    " R ",
    "1e",
    " to ",
    " and ",
    " x ",
    "+",
    " teeth",
    "/100 km",
  ];
  const text = fc.oneof(
    fc.string({ unit: "binary", maxLength: 30 }),
    fc.array(fc.constantFrom(...pieces), { maxLength: 12 }).map((p) => p.join("")),
  );

  it("gives a finite number within bounds or a problem that can be mended, and never throws", () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), text, (kind, typed) => {
        const reading = readQuantity(kind, typed);
        const said = reading.ok ? reading.understood : reading.problem.message;
        expect(said.replaceAll(typed.trim(), "")).not.toMatch(/NaN|Infinity|undefined/);
        if (!reading.ok) expect(reading.problem.code).toMatch(/^quantity-/);
        else if (!reading.unknown) {
          expect(reading.value).toBeGreaterThanOrEqual(quantityKinds[kind].min);
          expect(reading.value).toBeLessThanOrEqual(quantityKinds[kind].max);
        }
      }),
      { numRuns: 5000, seed: 3 },
    );
  });

  it("guesses only what reads", () => {
    let guesses = 0;
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.integer({ min: 0, max: 200_000 }), (kind, number) => {
        const reading = readQuantity(kind, String(number));
        if (reading.ok || reading.likely === undefined) return true;
        guesses++;
        return readQuantity(kind, reading.likely).ok;
      }),
      { numRuns: 2000, seed: 4 },
    );
    expect(guesses).toBeGreaterThan(100);
  });

  it("answers each question with text that asks nothing more", () => {
    const asked: [QuantityKind, string][] = [
      ["mass", "14 1/4 cwt"],
      ["mass", "14 cwt 2 qr"],
      ["mass", "1.480 kg"],
      ["distance", "1,480 km"],
      ["fuelUse", "26 mpg"],
      ["fuelUse", "26"],
      ["gradient", "14"],
      ["gradient", "9 down"],
      ["duration", "8:30"],
      ["wheelRadius", "560 mm"],
    ];
    for (const [kind, typed] of asked) {
      const reading = readQuantity(kind, typed);
      if (reading.ok && reading.unknown) throw new Error(typed);
      const choices = reading.question?.choices ?? [];
      expect(choices.length, typed).toBeGreaterThan(1);
      for (const { text: choice, remember } of choices) {
        const next = readQuantity(kind, choice, remember);
        // an answer may be out of bounds (1 in 9 as 9 h), but it never asks the same again
        if (next.ok && !next.unknown) expect(next.question?.id, choice).not.toBe(reading.question?.id);
        else expect(next, choice).toMatchObject({ ok: false, problem: { code: "quantity-range" } });
      }
    }
  });
});

it("gives every kind a suffix that names may end in, bounds in order and its own unit", () => {
  for (const [name, kind] of Object.entries(quantityKinds)) {
    if (name !== "count" && name !== "money") expect(unitSuffixes, name).toContain(kind.suffix);
    expect(kind.min).toBeLessThan(kind.max);
    expect(kind.usual[0]).toBeGreaterThanOrEqual(kind.min);
    expect(kind.usual[1]).toBeLessThanOrEqual(kind.max);
  }
});
