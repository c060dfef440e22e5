import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Motor } from "../../../../shared/job/schema/motor.ts";
import { InputError } from "../../../../shared/problems.ts";
import { RADPS_PER_RPM } from "../../../../shared/units.ts";
import { bilinear, rectangularTable } from "../../../../sim/math/rectangularTable.ts";
import { fourTermLoss_W } from "../../../../sim/motor/loss.ts";
import { lossTableOf, readMotorMap } from "../../../../sim/plan/motorMap/readMotorMap.ts";

// The 100 kW induction machine of the textbook. [LarminieLowry2012, eq. 8.25]
const law = { copper_coeff: 0.3, iron_coeff: 0.01, windage_coeff: 5e-6, constant_W: 600 };
const speeds_rpm = Array.from({ length: 28 }, (_, i) => 250 * (i + 1));
const torques_Nm = Array.from({ length: 28 }, (_, j) => 5 * (j + 1));

function efficiency_frac(speed_rpm: number, torque_Nm: number): number {
  const shaft_W = torque_Nm * speed_rpm * RADPS_PER_RPM;
  return shaft_W / (shaft_W + fourTermLoss_W(law, torque_Nm, speed_rpm * RADPS_PER_RPM));
}

/** The law as a map with speed down, one row of text a speed. */
function speedDown(corner: string, show: (share: number) => string, between = ","): string {
  const rows = speeds_rpm.map((speed) => [speed, ...torques_Nm.map((torque) => show(efficiency_frac(speed, torque)))]);
  return [[corner, ...torques_Nm], ...rows].map((row) => row.join(between)).join("\n");
}

function problemsOf(text: string) {
  try {
    readMotorMap("map.csv", text);
  } catch (error) {
    if (error instanceof InputError) return error.problems;
    throw error;
  }
  throw new Error(`read without complaint: ${text}`);
}

const share = (value: number) => value.toFixed(12);
const percent = (value: number) => (100 * value).toFixed(10);

describe("a textbook law, printed as an efficiency map and read back", () => {
  const map = readMotorMap("map.csv", speedDown("rpm \\ Nm", share));

  it("is the law again at every node it printed", () => {
    let compared = 0;
    map.speed_radps.forEach((speed, i) => {
      map.torque_Nm.forEach((torque, j) => {
        if (speed === 0 || torque === 0) return;
        compared++;
        // twelve printed digits of an efficiency, of which the loss is the small difference to 1
        expect(Math.abs((map.loss_W[i]?.[j] ?? 0) / fourTermLoss_W(law, torque, speed) - 1)).toBeLessThan(1e-9);
      });
    });
    expect(compared).toBe(28 * 28);
  });

  it("is the law on the edges without power, where the map said nothing", () => {
    expect(map.speed_rpm[0]).toBe(0);
    expect(map.torque_Nm[0]).toBe(0);
    expect(map.filledCount).toBe(29 + 28);
    let compared = 0;
    map.speed_radps.forEach((speed, i) => {
      map.torque_Nm.forEach((torque, j) => {
        if (speed > 0 && torque > 0) return;
        compared++;
        expect(Math.abs((map.loss_W[i]?.[j] ?? 0) / fourTermLoss_W(law, torque, speed) - 1)).toBeLessThan(1e-6);
      });
    });
    expect(compared).toBe(29 + 28);
  });

  it("is within half a percent of the law between the nodes", () => {
    // half a percent is the published expectation; h²/8 of the second derivatives makes 1.9 W of kc T² and 0.0026 w of
    // kw w³ on this grid, of 600 W and more
    const table = rectangularTable(map.speed_radps, map.torque_Nm, map.loss_W);
    let compared = 0;
    for (let rpm = 550; rpm < 7000; rpm += 130) {
      for (let torque = 10.5; torque < 140; torque += 7.3) {
        const speed = rpm * RADPS_PER_RPM;
        compared++;
        expect(Math.abs(bilinear(table, speed, torque) / fourTermLoss_W(law, torque, speed) - 1)).toBeLessThan(0.005);
      }
    }
    expect(compared).toBe(50 * 18);
  });

  it("meets the textbook's efficiency between the nodes", () => {
    // 0.91066 at 100 Nm and 400 rad/s, from the law by hand; loss within half a percent is 0.05 % of efficiency
    const table = rectangularTable(map.speed_radps, map.torque_Nm, map.loss_W);
    const loss_W = bilinear(table, 400, 100);
    expect(Math.abs(40_000 / (40_000 + loss_W) - 0.91066)).toBeLessThan(5e-4);
  });

  it("fits the job file's motor", () => {
    const motor = {
      name: "invented",
      kind: "induction",
      origin: "textbook law",
      mass_kg: 60,
      envelope: { kind: "peak", torque_Nm: 140, power_kW: 100 },
      reference_V: 300,
      maxSpeed_rpm: 9000,
      loss: lossTableOf(map),
    };
    expect(Motor.safeParse(motor).success).toBe(true);
  });
});

describe("the shapes maps come in", () => {
  const wanted = readMotorMap("map.csv", speedDown("rpm \\ Nm", share)).loss_W.flat();

  function expectSame(text: string, said: RegExp) {
    const map = readMotorMap("map.csv", text);
    expect(map.notes.join("\n")).toMatch(said);
    const found = map.loss_W.flat();
    expect(found.length).toBe(wanted.length);
    const errors = found.map((loss_W, i) => Math.abs(loss_W / (wanted[i] ?? 0) - 1));
    expect(Math.max(...errors)).toBeLessThan(1e-6);
  }
  const torqueDown = (corner: string) => {
    const rows = torques_Nm.map((torque) => [
      torque,
      ...speeds_rpm.map((speed) => share(efficiency_frac(speed, torque))),
    ]);
    return [[corner, ...speeds_rpm], ...rows].map((row) => row.join(",")).join("\n");
  };
  const long = (head: string, flip = false) =>
    [
      head,
      ...speeds_rpm.flatMap((speed) =>
        torques_Nm.map((torque) =>
          [...(flip ? [torque, speed] : [speed, torque]), percent(efficiency_frac(speed, torque))].join(","),
        ),
      ),
    ].join("\n");

  it("torque down and speed across", () => expectSame(torqueDown("Nm \\ rpm"), /as shares/));
  it("no words at all: the larger numbers are the speeds", () => expectSame(torqueDown(""), /no words say .* across/));
  it("a long table in percent", () => expectSame(long("speed (rpm),torque (Nm),efficiency (%)"), /in percent/));
  it("percent signs in the cells", () =>
    expectSame(
      speedDown("rpm/Nm", (value) => `${percent(value)}%`),
      /in percent/,
    ));
  it("semicolons and decimal commas", () =>
    expectSame(
      speedDown("rpm;", (value) => share(value).replace(".", ","), ";").replace("rpm;;", "rpm;"),
      /as shares/,
    ));
  it("tabs", () => expectSame(speedDown("rpm \\ Nm", share, "\t"), /as shares/));
  it("thousands marked in quoted speeds", () =>
    expectSame(speedDown("rpm \\ Nm", share).replace("\n7000,", '\n"7,000",'), /as shares/));
  it("a byte order mark, remarks and names beside the axes", () => {
    const [, ...rows] = speedDown("", percent).split("\n");
    const head = `\ufeff# an invented machine, efficiency in percent\n,,Torque (Nm)\n,,${torques_Nm.join(",")}`;
    expectSame([head, ...rows.map((row, i) => `${i === 0 ? "Speed (rpm)" : ""},${row}`)].join("\n"), /in percent/);
  });
  it("speed and torque in each other's place, in words and in columns", () => {
    expectSame(long("torque (Nm),speed (rpm),efficiency (%)"), /each other's place/);
    expectSame(long("speed (rpm),torque (Nm),efficiency (%)", true), /each other's place/);
    expectSame(torqueDown("rpm \\ Nm"), /each other's place/);
  });
  it("losses in watts and kilowatts", () => {
    const losses = (scale: number) => {
      const rows = speeds_rpm.map((speed) => [
        speed,
        ...torques_Nm.map((torque) => fourTermLoss_W(law, torque, speed * RADPS_PER_RPM) / scale),
      ]);
      return [["rpm", ...torques_Nm], ...rows].map((row) => row.join(",")).join("\n");
    };
    expectSame(`loss in W: rpm down\n${losses(1)}`, /losses read in W/);
    expectSame(`loss in kW: rpm down\n${losses(1000)}`, /losses read in kW/);
    expectSame(losses(1), /too large for percentages/);
  });
  it("percentages with one value that is none, which is refused and makes no watts of the others", () => {
    const lines = speedDown("rpm \\ Nm", percent).split("\n");
    lines[3] = lines[3].replace(/[^,]+$/, "912.5");
    expect(problemsOf(lines.join("\n"))).toEqual([
      {
        code: "map-efficiency",
        where: "map.csv line 4",
        message: "found 912.5 at 750 rpm, 140 Nm, an efficiency is 0 to 100",
      },
    ]);
  });

  it("rad/s and lb ft", () => {
    const map = readMotorMap("map.csv", "rad/s \\ lb ft,10,20\n100,0.8,0.85\n200,0.85,0.9");
    expect(map.speed_radps[1]).toBeCloseTo(100, 9);
    expect(map.torque_Nm[2]).toBeCloseTo(27.11636, 5);
    expect(map.notes).toContain("torques read in lb ft");
  });

  it("torques below zero, where the map goes on into braking", () => {
    // 100 rad/s, -50 Nm, 0.8: 4000 W of 5000 W come back
    const map = readMotorMap("map.csv", "rad/s \\ Nm,-50,50,100\n100,0.8,0.8,0.8\n200,0.8,0.8,0.8");
    const column = map.torque_Nm.indexOf(-50);
    expect(map.loss_W[1]?.[column]).toBeCloseTo(1000, 6);
    expect(map.loss_W[1]?.[map.torque_Nm.indexOf(50)]).toBeCloseTo(1250, 6);
  });
});

describe("gaps", () => {
  it("are filled from their neighbours: the law again, where the rest is the law", () => {
    const rows = speedDown("rpm \\ Nm", share)
      .split("\n")
      .map((row) => row.split(","));
    const gaps: [number, number][] = [
      [5, 5],
      [28, 28],
      [28, 27],
      [27, 28],
      [1, 1],
      [7, 2],
    ];
    for (const [i, j] of gaps) rows[i]?.splice(j, 1, "");
    const map = readMotorMap("map.csv", rows.map((row) => row.join(",")).join("\n"));
    expect(map.filledCount).toBe(29 + 28 + gaps.length);
    for (const [i, j] of gaps) {
      const law_W = fourTermLoss_W(law, map.torque_Nm[j] ?? 0, map.speed_radps[i] ?? 0);
      expect(Math.abs((map.loss_W[i]?.[j] ?? 0) / law_W - 1)).toBeLessThan(1e-6);
    }
  });

  it("meet a map that is no law: a filled edge keeps the step of the nodes beside it and is never above them", () => {
    const map = readMotorMap(
      "map.csv",
      "rpm \\ Nm,20,40,80\n1000,0.60,0.75,0.70\n2000,0.75,0.88,0.86\n4000,0.80,0.86,0.90",
    );
    map.loss_W.forEach((row, i) => {
      expect(row[0]).toBeGreaterThan(0);
      if (i > 0) expect(row[0]).toBeLessThanOrEqual(row[1] ?? 0);
    });
  });
});

describe("maps refused", () => {
  it.each<[string, string, RegExp]>([
    ["rpm \\ Nm,20,40\n1000,0.8,0.9", "map-axis", /a single speed above 0 rpm, at least 2 wanted/],
    ["rpm \\ Nm,20\n1000,0.8\n2000,0.9", "map-axis", /a single torque above 0 Nm/],
    ["rpm,torque (Nm),efficiency\n1000,20,0.8\n2000,20,0.8", "map-axis", /a single torque/],
    [
      "rpm \\ Nm,20,40\n1000,0.8,1.2\n2000,0.85,0.9",
      "map-efficiency",
      /found 1.2 at 1000 rpm, 40 Nm, an efficiency is 0 to 1/,
    ],
    [
      "rpm \\ Nm,20,40\n1000,80,112\n2000,85,90",
      "map-efficiency",
      /found 112 at 1000 rpm, 40 Nm, an efficiency is 0 to 100/,
    ],
    ["rpm \\ Nm,20,40\n1000,0.8,87\n2000,0.85,90", "map-mixed", /2 of 4 values below 1/],
    ["rpm \\ Nm,20,40\n1000,0.8,good\n2000,0.85,0.9", "map-cell", /found good/],
    ["loss W\nrpm,20,40\n1000,80,-3\n2000,85,90", "map-loss", /found -3/],
    ["rpm \\ Nm,20,40\n1000,0.8,0.9\n1000,0.85,0.9\n2000,0.8,0.9", "map-twice", /1000 rpm, 20 Nm a second time/],
    ["rpm \\ Nm,20,40\n1000,1,1\n2000,1,1", "map-lossless", /no loss anywhere/],
    ["rpm \\ Nm,20,40\n1000,0.8,0.9\n90000,0.85,0.9", "map-axis", /at most 30000 rpm/],
    ["", "map-empty", /no line/],
    [" \n,,\n", "map-empty", /no line/],
    ["a letter to the workshop", "map-shape", /no table/],
  ])("%j: %s", (text, code, message) => {
    const problems = problemsOf(text);
    expect(problems[0]?.code).toBe(code);
    expect(problems[0]?.message).toMatch(message);
    expect(problems[0]?.where).toContain("map.csv");
  });

  it("tells the line and tells all of them", () => {
    const problems = problemsOf("# made up\nrpm \\ Nm,20,40\n1000,0.8,1.2\n2000,1.3,0.9");
    expect(problems.map((problem) => problem.where)).toEqual(["map.csv line 3", "map.csv line 4"]);
  });

  it("refuses points that are no grid", () => {
    const rows = Array.from({ length: 12 }, (_, i) => `${1000 + 313 * i},${20 + 7 * i},0.8`);
    expect(problemsOf(["rpm,Nm,efficiency", ...rows].join("\n"))[0]?.code).toBe("map-scattered");
  });
});

it("gives finite losses or problems for any text, and nothing else", () => {
  const cell = fc.oneof(
    fc.integer({ min: -10, max: 9000 }).map(String),
    fc.double({ min: 0, max: 1, noNaN: true }).map((x) => x.toFixed(3)),
    fc.constantFrom("", "rpm", "Nm", "eff", "loss", "%", "1e999", '"', "0,5"),
  );
  let read = 0;
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { minLength: 3, maxLength: 5 }), { maxLength: 7 }),
      fc.constantFrom(",", ";", "\t"),
      (rows, between) => {
        try {
          const map = readMotorMap("any.csv", rows.map((row) => row.join(between)).join("\n"));
          read++;
          return map.loss_W.flat().every((loss_W) => Number.isFinite(loss_W) && loss_W >= 0);
        } catch (error) {
          return error instanceof InputError;
        }
      },
    ),
    { numRuns: 3000, seed: 7 },
  );
  // half the rows of a drawn table are readable by chance only; a square of shares always is
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0.3, max: 0.99, noNaN: true }), { minLength: 9, maxLength: 9 }), (shares) => {
      const rows = [1000, 2000, 3000].map((speed, i) => [speed, ...shares.slice(3 * i, 3 * i + 3)].join(","));
      const map = readMotorMap("any.csv", ["rpm,10,20,30", ...rows].join("\n"));
      read++;
      return map.loss_W.flat().every((loss_W) => Number.isFinite(loss_W) && loss_W >= 0);
    }),
    { numRuns: 300, seed: 8 },
  );
  expect(read).toBeGreaterThanOrEqual(300);
});

describe("what is said of a map that was read", () => {
  const losses = (cells: string) => `loss W: rpm down\nrpm \\ Nm,0,20,40\n0,0,0,0\n1000,50,80,150\n2000,90,${cells}`;

  it("counts the nodes that it had and those that were filled, and nothing where none was", () => {
    const whole = readMotorMap("map.csv", losses("130,220"));
    expect(whole).toMatchObject({ givenCount: 9, filledCount: 0, notes: ["losses read in W"] });
    const gap = readMotorMap("map.csv", losses(",220"));
    expect(gap).toMatchObject({ givenCount: 8, filledCount: 1 });
    expect(gap.notes[1]).toBe(
      "1 of 9 nodes (no torque, no speed, gaps) filled by a four-term law fitted to the others",
    );
  });

  it("has twelve faults told at most", () => {
    const rows = Array.from({ length: 20 }, (_, i) => `${1000 + 1000 * i},0.8,1.3`);
    expect(problemsOf(["rpm \\ Nm,20,40", ...rows].join("\n"))).toHaveLength(12);
  });

  it("is no grid with fewer than a quarter of its nodes", () => {
    // Five of twenty nodes, nought counted in; and four.
    const sparse = (last: string) => `rpm \\ Nm,20,40,60\n1000,0.8,,\n2000,,0.85,\n3000,,,0.9\n4000,0.8,,${last}`;
    expect(readMotorMap("map.csv", sparse("0.9")).givenCount).toBe(5);
    expect(problemsOf(sparse(""))[0]?.message).toBe(
      "found 4 values over 5 speeds and 4 torques, wanted a grid: the same torques at each speed",
    );
  });
});

describe("wild cells", () => {
  it.each([
    ["a value", "rpm \\ Nm,10,20\n1000,0.9,1e308\n2000,0.9,0.9"],
    ["a loss in kilowatts", "loss kW rpm \\ Nm,10,20\n1000,1,1e308\n2000,1,1"],
    ["a speed in rad/s", "rad/s \\ Nm,10,20\n100,0.9,0.9\n1e308,0.9,0.9"],
    ["a torque in lb ft", "rpm \\ lb ft,10,1.7e308\n1000,0.9,0.9\n2000,0.9,0.9"],
    ["an entry of a long table", "rpm,Nm,efficiency\n1000,10,0.9\n-1e308,20,0.9"],
  ])("%s of 1e308 is refused by its line, and no message has an infinite number", (_, text) => {
    const [problem] = problemsOf(text);
    expect(problem?.where).toMatch(/^map.csv line \d$/);
    expect(problem?.message).toMatch(/found -?1(.7)?e\+308, at most 1e\+9/);
  });

  it("an efficiency so small that its loss is infinite is refused with what is allowed", () => {
    const of = (cell: string) =>
      problemsOf(`rpm \\ Nm,10,20\n1000,0.9,0.9\n2000,0.9,${cell}`).map(({ message }) => message);
    expect(of("1e-308")).toEqual(["found 1e-308 at 2000 rpm, 20 Nm, an efficiency is at least 0.01 or empty"]);
    expect(of("0.005")[0]).toContain("at least 0.01");
  });

  it("a job's efficiency map is refused for the same reason", () => {
    const loss = { kind: "efficiencyMap", speed_rpm: [1000, 2000], torque_Nm: [10, 20], efficiency_frac: [[0.9, 0.9], [0.9, 1e-308]] }; // biome-ignore format: a table
    const checked = Motor.shape.loss.safeParse(loss);
    expect(checked.error?.issues.map(({ message }) => message)).toEqual(["found 1e-308, 0.01 to 1 allowed"]);
  });

  // Each of these took time with the square of its length: half an hour and more at a megabyte.
  const long = 1_000_000;
  it.each([
    ["digits and then a letter in a cell", `rpm \\ Nm,10,20\n1000,0.9,${"1".repeat(long)}x\n2000,0.9,0.9`],
    ["digits and then a letter alone", `${"1".repeat(long)}x;2;3\n4;5;6`],
    ["a remark without a space", `${"a".repeat(long)}\nrpm \\ Nm,10,-20\n1000,0.9,2\n2000,0.9,2`],
  ])("a megabyte of %s is refused at once, in a short message", (_, text) => {
    for (const { message } of problemsOf(text)) expect(message.length).toBeLessThan(200);
  });
});
