import type { Job } from "../../../shared/job/job.ts";
import { formatNumber as n } from "../../../shared/quantity/formatNumber.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import { type ConditionId, conditionNames } from "../../plan/answer/conditions.ts";
import { measurementOf } from "../../plan/answer/measurements.ts";
import type { Draw } from "../../plan/vary/variants.ts";
import type { VariedPack } from "../../plan/vary/varyPack.ts";
import { varyWords } from "../../plan/vary/varyWords.ts";
import { hasOption, numberOption, textOption } from "../arguments/optionValue.ts";
import { packIndexOf } from "../arguments/packOption.ts";
import { forProgram, onlyPack, overRoad } from "../arguments/usualOptions.ts";
import type { Command } from "../command.ts";
import { readJobFile } from "../files/jobFile.ts";
import { onlyJobPath } from "../files/oneJob.ts";
import { jsonText } from "../printing/json.ts";
import { textTable } from "../printing/table.ts";
import { wrapText } from "../printing/wrapText.ts";
import { roadToDrive } from "../roads/roadToDrive.ts";
import { varyOnAll } from "../workers/varyOnAll.ts";

const USUAL_VARIANTS = 256;
const MOST_SEED = 2 ** 31 - 1;

export const vary: Command = {
  name: "vary",
  usage: "JOB [--variants N] [--seed S] [--pack NAME] [--trace ID|FILE] [--json]",
  summary: "how sure the answer is: each pack in many variants of what is not known, and what to measure",
  options: {
    variants: { type: "string", value: "N", help: "variants of each pack, 16 to 100000; 256 if left out" },
    seed: { type: "string", value: "S", help: "another draw of them, 0 to 2147483647; 1 if left out" },
    pack: onlyPack,
    trace: overRoad,
    json: forProgram,
  },
  async run(args, print, warn) {
    const path = onlyJobPath(args, "vary");
    const job = readJobFile(path);
    const draw: Draw = {
      variants:
        numberOption(args, "variants", { low: 16, high: 100_000, unit: "variants", isWhole: true }) ?? USUAL_VARIANTS,
      seed: numberOption(args, "seed", { low: 0, high: MOST_SEED, unit: "", isWhole: true }) ?? 1,
    };
    const indexes = textOption(args, "pack") === undefined ? job.packs.map((_, i) => i) : [packIndexOf(job, args)];
    const { trace } = roadToDrive(job, path, textOption(args, "trace"), warn);
    const shown = new Map<number, number>();
    const packs = await varyOnAll({ job, trace, draw }, indexes, (index, share) => {
      if (share < (shown.get(index) ?? 0) + 0.25) return;
      shown.set(index, share);
      warn(`${job.packs[index].name}: ${Math.round(100 * share)} % of ${draw.variants} variants driven`);
    });
    print(
      hasOption(args, "json") ? jsonText(asJson(job, trace.id, draw, packs)) : asText(job, trace.title, draw, packs),
    );
  },
};

function asJson(job: Job, road: string, draw: Draw, packs: readonly VariedPack[]) {
  return {
    job: job.title,
    road,
    day_km: job.usualDay_km,
    ...draw,
    packs: packs.map((pack) => ({
      name: pack.pack,
      driving: pack.driving,
      left_km: pack.left_km ?? null,
      home_frac: pack.home_frac,
      unknowns: pack.inputs.map(({ open, rank_coeff, left_frac, gain_km }) => ({
        path: open?.path ?? "road",
        from: open?.from ?? "log",
        value: open?.value ?? null,
        low: open?.low ?? null,
        high: open?.high ?? null,
        rank_coeff,
        left_frac,
        gain_km,
        measure: open ? measurementOf(open.path).name : null,
      })),
      notes: varyWords(pack).map((sentence) => messageIn(sentence, "metric")),
    })),
  };
}

function asText(job: Job, road: string, { variants, seed }: Draw, packs: readonly VariedPack[]): string {
  const head = `${job.title}\nusual day ${n(job.usualDay_km)} km on ${road}; ${variants} variants of each pack, seed ${seed}`;
  const rows = packs.flatMap(({ pack, left_km, home_frac }) =>
    (Object.keys(conditionNames) as ConditionId[]).map((condition) => {
      const spread = left_km?.[condition];
      const cells = spread ? [spread.p5, spread.p25, spread.p50, spread.p75, spread.p95] : [];
      const home = `${Math.round(100 * home_frac[condition])} %`;
      return [pack, conditionNames[condition], ...(spread ? cells.map((km) => n(km, 3)) : Array(5).fill("-")), home];
    }),
  );
  const columns = [
    { heading: "pack" },
    { heading: "state" },
    ...["5 %", "25 %", "half", "75 %", "95 %", "home"].map((heading) => ({ heading, isNumber: true })),
  ];
  const sections = packs.map((pack) =>
    [...varyWords(pack).map((sentence) => wrapText(messageIn(sentence, "metric"))), ...ranked(pack)].join("\n"),
  );
  return [head, `Kilometres left on coming home\n${textTable(columns, rows)}`, ...sections].join("\n\n");
}

/** What matters most of what is open. */
function ranked({ inputs }: VariedPack): string[] {
  const shown = inputs.slice(0, 6);
  if (shown.length === 0) return [];
  const columns = [
    { heading: "open" },
    { heading: "from" },
    ...["rank corr.", "known, narrower by (km)"].map((heading) => ({ heading, isNumber: true })),
  ];
  const rows = shown.map(({ open, rank_coeff, gain_km }) => [
    open?.path ?? "the road",
    open ? `${n(open.low)} to ${n(open.high)}` : "its log",
    rank_coeff.toFixed(2),
    gain_km.toFixed(1),
  ]);
  return [textTable(columns, rows)];
}
