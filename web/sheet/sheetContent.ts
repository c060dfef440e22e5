import { drivenRoad } from "../../shared/job/drivenRoad.ts";
import type { Job } from "../../shared/job/job.ts";
import { messageIn } from "../../shared/quantity/message.ts";
import { moneyBetween } from "../../shared/quantity/money.ts";
import { quarterHours } from "../../shared/quantity/quarterHours.ts";
import { type UnitHabit, writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import {
  type Answer,
  answerWords,
  type CostPlan,
  chargePlan,
  costPlan,
  type DriveReport,
  type Profile,
  settlementWords,
} from "../../sim/index.ts";
import { answerTable } from "../answer/answerTable.ts";
import { rowsShown } from "../answer/picture/rowsShown.ts";
import { assumptionsOf } from "./assumptions.ts";
import { chargeFact, placeWords } from "./chargeFacts.ts";
import { gearFacts } from "./gearFacts.ts";
import { type OriginGroups, originGroups } from "./originGroups.ts";
import { roadFact } from "./roadFact.ts";
import { standingOf } from "./standing.ts";

/** What the sheet is made from. */
export interface SheetInput {
  readonly job: Job;
  readonly runs: Pick<DriveReport, "candidates" | "trace">;
  readonly answer: Answer;
  /** Height along the road, where it is known. */
  readonly profile?: Profile | undefined;
  /** The pack it speaks for: the one recommended, or the one the workshop chose. */
  readonly chosen?: number | undefined;
  readonly units: UnitHabit;
  readonly date: Date;
}

/** Every word and number of the client sheet, before any of it is drawn. */
export interface SheetContent {
  readonly title: string;
  readonly client: string;
  readonly workshop: string;
  readonly date: string;
  readonly isInvented: boolean;
  readonly use: string;
  readonly headline: string;
  readonly sentence: string;
  /** A pack that must not be used: its numbers are not printed. */
  readonly isStop: boolean;
  /** A line more stands in the sentence: over a plate when laden, or a pack that was asked for. */
  readonly isLonger: boolean;
  readonly rows: readonly number[];
  readonly chosen: number | undefined;
  readonly table: {
    readonly head: readonly string[];
    readonly rows: readonly { readonly cells: readonly string[]; readonly isChosen: boolean }[];
  };
  readonly tableRemark: string;
  /** Whether its figures are those of a frozen prediction. */
  readonly standing: string;
  readonly factsTitle: string;
  readonly facts: readonly (readonly [string, string | undefined])[];
  readonly origins: OriginGroups;
  readonly settles: string;
  readonly assumptions: readonly (readonly string[])[];
}

/** The words and numbers of the client sheet. */
export function sheetContent({ job, runs, answer: whole, profile, chosen, units, date }: SheetInput): SheetContent {
  // A name of any length would push the foot off the page.
  const answer = { ...whole, packs: whole.packs.map((pack) => ({ ...pack, name: shortened(pack.name) })) };
  const index = chosen ?? answer.recommended;
  const words = answerWords(answer, index);
  const rows = rowsShown(answer, index);
  const charging = chargePlan({ ...job, units }, runs.candidates);
  const costs = costPlan(job, runs.candidates, charging);
  const table = answerTable(answer, rows, units, undefined, charging, costs);
  const { pricesIn } = table;
  const pack = index === undefined ? undefined : answer.packs[index];
  const run = index === undefined ? undefined : runs.candidates[index];
  const unit = units === "metric" ? "km" : "miles";
  const mass = (mass_kg: number) => writeQuantity("mass", Math.round(mass_kg), units, 4);
  const { gross_kg } = job.vehicle;
  return {
    title: job.title,
    client: job.client ?? "",
    workshop: job.workshop ?? "",
    date: date.toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" }),
    isInvented: job.isInvented,
    use: job.use.trim(),
    headline: messageIn(words.headline, units),
    sentence: words.sentences.map((sentence) => messageIn(sentence, units)).join(" "),
    isStop: words.isStop,
    isLonger: pack?.overPlate !== undefined || answer.packs.some(({ isAskedFor }) => isAskedFor),
    rows,
    chosen: index,
    table: {
      head: [
        "Pack",
        "Weight",
        `${unit} left, new`,
        "in winter",
        "ten years, winter",
        "Usual day",
        "Empty to full",
        ...(pricesIn === undefined ? [] : [pricesIn === "" ? "Price" : `Price, ${shortened(pricesIn, 10)}`]),
        "Verdict",
      ],
      rows: table.rows.map((row) => {
        const packOf = answer.packs[row.index];
        const at = packOf.stop ? undefined : charging.rows[row.index][0];
        const hours = (figures: { readonly time_h: number } | undefined) =>
          figures ? quarterHours(figures.time_h) : at?.stop ? "stop" : "–";
        return {
          cells: [
            row.isAskedFor ? `${row.name}*` : row.name,
            row.weight,
            ...row.left,
            hours(at?.usualDay),
            hours(at?.emptyToFull),
            ...(pricesIn === undefined ? [] : [row.price]),
            row.verdict,
          ],
          isChosen: row.index === index,
        };
      }),
    },
    tableRemark: `${table.rows.some(({ isAskedFor }) => isAskedFor) ? "* As asked for. " : ""}Charging: ${placeWords(charging.supplies[0], units)}. Weight: cells, boxes and bars.`,
    standing: standingOf(job, runs, whole, units),
    factsTitle: pack ? `With ${pack.name}` : "This car",
    facts: [
      ["Road", roadFact(shortened(drivenRoad(job).title, 60), runs.trace, profile, units)],
      ...gearFacts(job, units),
      ["Charge times", index === undefined || pack?.stop ? undefined : chargeFact(charging.rows[index], units)],
      [
        "Weight",
        run &&
          `${mass(run.testMass_kg)} as driven${gross_kg === undefined ? "; plated weight not known" : `; plated ${mass(gross_kg)}`}`,
      ],
      ["Price", priceFact(costs)],
      [
        "Conditions",
        `${mass(job.vehicle.load_kg)} of people and luggage; ${winterWords(job, units)}; ten years as ${Math.round(100 * job.allowance.aged_frac)} % of the capacity`,
      ],
    ],
    origins: originGroups(job),
    assumptions: assumptionsOf(job, units),
    settles:
      index === undefined
        ? ""
        : settlementWords(answer, index)
            .map((each) => messageIn(each, units))
            .join(" "),
  };
}

/** What the prices are, and what the client would pay without the conversion. */
function priceFact(costs: CostPlan | undefined): string | undefined {
  if (!costs?.packs.some(({ quote }) => quote.total)) return undefined;
  const { against, currency } = costs;
  const other = against.isAsItIs ? "" : `; ${shortened(against.name, 30)} ${moneyBetween(against.price, currency)}`;
  return `contingency in its high end${other}`;
}

const NAME_LETTERS = 14;

/** A name as far as a line of the sheet has room for it. */
function shortened(name: string, most = NAME_LETTERS): string {
  return name.length > most ? `${name.slice(0, most - 1)}…` : name;
}

function winterWords({ conditions, allowance }: Job, units: UnitHabit): string {
  if (!conditions?.winter) return `winter taken as ${allowance.winter_ratio} times the energy`;
  const { temperature_degC, heat } = conditions.winter;
  const warm = heat.kind === "none" ? "not heated" : heat.kind === "fuel" ? "heated by fuel" : "electric heater";
  return `winter driven at ${writeQuantity("temperature", temperature_degC, units)}, cabin ${warm}`;
}
