import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { MPS_PER_KMH } from "../../../shared/units.ts";
import { changing, changingWords } from "../../plan/gears/changing.ts";
import { fourWheelDrive, hubWords } from "../../plan/gears/fourWheelDrive.ts";
import { demandOf, type GearRow, gearTable } from "../../plan/gears/gearTable.ts";
import { hoodStates, hoodWords } from "../../plan/gears/hoodStates.ts";
import { gearName } from "../../plan/gears/oneGear.ts";
import { recommendGear } from "../../plan/gears/recommendGear.ts";
import { type Pace, paceOf } from "../../plan/going/pace.ts";
import { paceRows, paceWords } from "../../plan/going/paceWords.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { quantityOption } from "../arguments/readOption.ts";
import { forProgram, overRoad, withPack } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const gears: Command = {
  name: "gears",
  usage: 'JOB [--pack NAME] [--hill "1 in 6"] [--top "70 mph"] [--trace ID|FILE] [--json]',
  summary:
    "what the car does in each gear left alone, and which gear to live in; starts and top speed beside the old engine",
  options: {
    pack: withPack,
    hill: {
      type: "string",
      value: "GRADIENT",
      help: "the steepest hill to start on; else the job's, or the steepest 60 m of the road",
    },
    top: { type: "string", value: "SPEED", help: "the top speed wanted; else the job's, or the road's" },
    trace: overRoad,
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "gears");
    const job = readJobFile(path);
    const packIndex = packIndexOf(job, args);
    const hill_ratio = quantityOption(args, "hill", "gradient", { min: 0.001, max: 0.6, label: "a hill" });
    const top_kmh = quantityOption(args, "top", "speed", { min: 5, max: 250, label: "a top speed" });
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const demand = {
      ...demandOf(trace, job.requirement),
      ...(hill_ratio !== undefined && { hill_ratio }),
      ...(top_kmh !== undefined && { top_kmh }),
    };
    const rows = gearTable(job, packIndex, trace, demand);
    const { recommended, reasons } = recommendGear(rows, demand);
    const changed = changing(job, packIndex, trace);
    const comparison = changed && changingWords(changed, recommended);
    const driveStates = fourWheelDrive(job, packIndex, trace);
    const hoods = hoodStates(job, packIndex, trace);
    const also = [comparison, hubWords(driveStates), hoodWords(hoods)].flatMap((each) => (each ? [each] : []));
    const sentences = [...reasons, ...also].map((reason) => messageIn(reason, "metric"));
    const pace = paceOf(job, packIndex);
    const pack = job.packs[packIndex].name;
    if (hasOption(args, "json")) {
      print(
        jsonText({
          job: job.title,
          pack,
          road: trace.id,
          ...demand,
          gears: rows.map((row) => ({
            ...row,
            range: row.range ?? null,
            battery_Whpkm: row.battery_Whpkm ?? null,
            rated: row.rated ?? null,
          })),
          changing: changed ?? null,
          recommended: recommended ? { gear: recommended.gear, range: recommended.range ?? null } : null,
          reasons: sentences,
          pace: paceJson(pace),
          driveStates: driveStates.map((state) => ({ ...state, battery_Whpkm: state.battery_Whpkm ?? null })),
          hoodStates: hoods.map((state) => ({ ...state, battery_Whpkm: state.battery_Whpkm ?? null })),
        }),
      );
      return;
    }
    const asked = demand.hill_ratio === undefined ? "" : `, hill ${n(100 * demand.hill_ratio)} %`;
    print(
      [
        `${job.title}\n${pack} aboard; ${trace.title}, top speed ${n(demand.top_kmh)} km/h${asked}`,
        table(rows),
        sentences.map((sentence) => wrapText(sentence)).join("\n"),
        paceTable(pace),
        paceWords(pace, "metric")
          .map((sentence) => wrapText(sentence))
          .join("\n"),
      ].join("\n\n"),
    );
  },
};

function table(rows: readonly GearRow[]): string {
  const hasHill = rows.some(({ hill }) => hill !== undefined);
  const hill = [
    { heading: "hill\nneeds\n(Nm)", isNumber: true },
    { heading: "\nhas\n(Nm)", isNumber: true },
    { heading: "hill\nheld for\n(min)", isNumber: true },
  ];
  const isRated = rows.some(({ rated }) => rated !== undefined);
  const hasPeak = rows.some(({ rated }) => rated?.peak_s !== undefined);
  const rated = [
    { heading: "rated\ncont.\n(%)", isNumber: true },
    ...(hasPeak ? [{ heading: `rated\n${n(rows[0].rated?.peak_s ?? 0)} s\n(%)`, isNumber: true }] : []),
  ];
  return textTable(
    [
      { heading: "\n\ngear" },
      { heading: "motor's\nlimit\n(km/h)", isNumber: true },
      { heading: "a tenth\nin hand\n(km/h)", isNumber: true },
      { heading: "motor\nat top\n(rpm)", isNumber: true },
      { heading: "starts\non up to\n(%)", isNumber: true },
      ...(hasHill ? hill : []),
      ...(isRated ? rated : []),
      { heading: "0 to 50\nkm/h\n(s)", isNumber: true },
      { heading: "from\npack\n(Wh/km)", isNumber: true },
      { heading: "road\nmissed\n(%)", isNumber: true },
    ],
    rows.map((row) => [
      gearName(row),
      n(row.top_kmh),
      n(row.easy_kmh),
      n(row.motorAtTop_rpm),
      n(row.steepestStart_percent),
      ...(row.hill ? [n(row.hill.needed_Nm), n(row.hill.available_Nm), heldText(row.hill)] : []),
      ...(row.rated ? [n(row.rated.continuous_percent)] : []),
      ...(row.rated?.peak_percent === undefined ? [] : [n(row.rated.peak_percent)]),
      row.to50kmh_s === undefined ? "-" : n(row.to50kmh_s),
      row.battery_Whpkm === undefined ? "-" : n(row.battery_Whpkm),
      n(100 * row.missed_frac, 2),
    ]),
  );
}

function paceTable(pace: Pace): string {
  const seconds = (value_s: number | undefined) => (value_s === undefined ? "-" : n(value_s));
  const top = (car: Pace["engine"]) => (car ? n(car.top.speed_mps / MPS_PER_KMH) : "-");
  return textTable(
    [
      { heading: "from rest, and on the way up" },
      { heading: "motor", isNumber: true },
      { heading: "old engine", isNumber: true },
    ],
    [
      ...paceRows(pace, "metric").map(({ from_kmh, to_kmh, motor_s, engine_s }) => [
        `${from_kmh} to ${to_kmh} km/h (s)`,
        seconds(motor_s),
        seconds(engine_s),
      ]),
      ["top speed (km/h)", top(pace.motor), top(pace.engine)],
    ],
  );
}

function paceJson(pace: Pace) {
  const { motor, engine, known, change } = pace;
  const car = ({ mass_kg, top }: typeof motor) => ({
    mass_kg,
    top_kmh: top.speed_mps / MPS_PER_KMH,
    topGear: top.gear,
    endedBy: top.because,
  });
  return {
    motor: car(motor),
    engine: engine ? car(engine) : null,
    rows: paceRows(pace, "metric").map(({ motor_s, engine_s, ...row }) => ({
      ...row,
      motor_s: motor_s ?? null,
      engine_s: engine_s ?? null,
    })),
    engineCurve: known.engine ? (known.engine.isTyped ? "typed" : "drawn") : null,
    engineAssumed: known.assumed,
    engineMissing: known.missing,
    change_s: change?.change_s ?? null,
    notes: paceWords(pace, "metric"),
  };
}

function heldText({ held_s, isHeldToEmpty }: NonNullable<GearRow["hill"]>): string {
  return isHeldToEmpty ? "to empty" : n(held_s / 60, 2);
}
