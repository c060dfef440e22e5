import type { Job } from "../../../shared/job/job.ts";
import { inputError } from "../../../shared/problems.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { M_PER_KM, MPS_PER_KMH } from "../../../shared/units.ts";
import { gearName } from "../../plan/gears/oneGear.ts";
import { heatStudy } from "../../plan/heat/heatStudy.ts";
import { heatWords } from "../../plan/heat/heatWords.ts";
import type { Hill } from "../../plan/hills/climb.ts";
import { surfaces } from "../../plan/hills/gripOnHill.ts";
import { hillAsked } from "../../plan/hills/hillAsked.ts";
import { hillWords } from "../../plan/hills/hillWords.ts";
import { type HillVerdict, judgeHill } from "../../plan/hills/judgeHill.ts";
import type { Trace } from "../../trace/trace.ts";
import { hasOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { quantityOption } from "../arguments/readOption.ts";
import { forProgram, overRoad, withPack } from "../arguments/usualOptions.ts";
import type { Command, CommandArguments } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";

export const hills: Command = {
  name: "hills",
  usage:
    'JOB [--hill "1 in 6"] [--length "400 m"] [--load "5 x 75 kg"] [--speed "20 mph"] [--hot "35 C"] [--pack NAME] [--trace ID|FILE] [--json]',
  summary:
    "start and climb of a hill in each gear: torque, grip, heat, the motor's rating; motor and pack on a hot day",
  options: {
    hill: { type: "string", value: "GRADIENT", help: "the hill; else the job's, or the steepest 60 m of the road" },
    length: { type: "string", value: "LENGTH", help: "how long it is; else as on the road, or 1 km" },
    load: { type: "string", value: "MASS", help: "people and luggage aboard; else the job's" },
    speed: { type: "string", value: "SPEED", help: "climbed at this speed; else 30 km/h, or what a low gear does" },
    hot: { type: "string", value: "TEMPERATURE", help: "a hot day for motor and pack; else the job's, or 35 °C" },
    pack: withPack,
    trace: overRoad,
    json: forProgram,
  },
  run(args, print, warn) {
    const path = onlyJobPath(args, "hills");
    const typed = readJobFile(path);
    const load_kg = quantityOption(args, "load", "mass", { min: 0, max: 5000, label: "a load" });
    const hotDay_degC = quantityOption(args, "hot", "temperature", { min: 15, max: 55, label: "a hot day" });
    const laden = load_kg === undefined ? typed : { ...typed, vehicle: { ...typed.vehicle, load_kg } };
    const job = hotDay_degC === undefined ? laden : { ...laden, requirement: { ...laden.requirement, hotDay_degC } };
    const packIndex = packIndexOf(job, args);
    const speed_kmh = quantityOption(args, "speed", "speed", { min: 2, max: 150, label: "a speed" });
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const hill = hillOf(job, args, trace, path);
    const verdict = judgeHill(job, packIndex, hill, speed_kmh);
    const sentences = hillWords(job, hill, verdict).map((sentence) => messageIn(sentence, "metric"));
    const heat = heatStudy(job, packIndex, trace);
    const hot = heatWords(job, heat).map((sentence) => messageIn(sentence, "metric"));
    const pack = job.packs[packIndex].name;
    if (hasOption(args, "json")) {
      const rows = verdict.rows.map((row) => ({ ...row, range: row.range ?? null }));
      print(
        jsonText({
          job: job.title,
          pack,
          hill,
          mass_kg: verdict.mass_kg,
          gears: rows,
          grip: verdict.grip,
          notes: sentences,
          hotDay: { ...heat, notes: hot },
        }),
      );
      return;
    }
    const head = `${job.title}\n${pack} aboard, ${n(verdict.mass_kg, 4)} kg; ${n(hill.length_m)} m at ${n(100 * hill.grade_ratio)} %`;
    const tables = [gearTable(verdict), ...(verdict.grip.length > 0 ? [gripTable(verdict)] : [])];
    const sentenceLists = [sentences, hot].map((each) => each.map((sentence) => wrapText(sentence)).join("\n"));
    print([head, ...tables, ...sentenceLists].join("\n\n"));
  },
};

/** The hill that is asked for: typed, the job's, or the steepest of the road. */
function hillOf(job: Job, args: CommandArguments, trace: Trace, path: string): Hill {
  const grade_ratio = quantityOption(args, "hill", "gradient", { min: 0.001, max: 0.6, label: "a hill" });
  const length_km = quantityOption(args, "length", "distance", { min: 0.005, max: 200, label: "a length" });
  const asked = hillAsked(job.requirement, trace, {
    ...(grade_ratio !== undefined && { grade_ratio }),
    ...(length_km !== undefined && { length_m: length_km * M_PER_KM }),
  });
  if (asked) return { grade_ratio: asked.grade_ratio, length_m: asked.length_m };
  throw inputError("hill-missing", path, 'found no hill: the road is level; name one, such as --hill "1 in 6"');
}

function gearTable({ rows }: HillVerdict): string {
  return textTable(
    [
      { heading: "\n\ngear" },
      { heading: "to start\nneeds\n(Nm)", isNumber: true },
      { heading: "\nhas\n(Nm)", isNumber: true },
      { heading: "\nspare\n(%)", isNumber: true },
      { heading: "\n\nbound by" },
      { heading: "starts\non up to\n(%)", isNumber: true },
      { heading: "climbs\nat\n(km/h)", isNumber: true },
      { heading: "\npower\n(kW)", isNumber: true },
      { heading: "\nlasting\n(s)", isNumber: true },
    ],
    rows.map((row) => [
      gearName(row),
      n(row.needed_Nm),
      n(row.available_Nm),
      n(100 * row.spare_frac, 2),
      row.limit,
      n(100 * row.steepest_ratio),
      n(row.climb.speed_mps / MPS_PER_KMH),
      row.climb.slowsAfter_m === undefined ? n(row.climb.shaft_kW) : "slows",
      row.climb.slowsAfter_m === undefined ? n(row.climb.duration_s) : "-",
    ]),
  );
}

function gripTable({ grip }: HillVerdict): string {
  return textTable(
    [
      { heading: "axle driven" },
      { heading: "friction needed", isNumber: true },
      ...surfaces.map(({ name, grip_coeff }) => ({ heading: `${name} (${grip_coeff}), to spare`, isNumber: true })),
    ],
    grip.map(({ drivenAxle, needed_coeff, reserve_frac }) => [
      drivenAxle,
      needed_coeff.toFixed(2),
      ...surfaces.map(({ name }) => (reserve_frac[name] < 0 ? "slips" : `${n(100 * reserve_frac[name], 2)} %`)),
    ]),
  );
}
