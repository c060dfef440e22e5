import type { Pinned } from "../../shared/job/job.ts";
import { messageIn } from "../../shared/quantity/message.ts";
import { moneyBetween } from "../../shared/quantity/money.ts";
import { quarterHours } from "../../shared/quantity/quarterHours.ts";
import type { UnitHabit } from "../../shared/quantity/writeQuantity.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { type Answer, type ChargePlan, CONDITIONS, type CostPlan, leftCell } from "../../sim/index.ts";

/** The packs side by side, every cell as it is read. */
export interface AnswerTable {
  readonly rows: readonly AnswerRow[];
  readonly hasPinned: boolean;
  /** Where the refill is for: power from the wall, and the place. */
  readonly refillAt?: { readonly power: string; readonly place: string };
  /** What prices are in, where any pack has one; an empty text where the job names no currency. */
  readonly pricesIn?: string;
}

interface AnswerRow {
  readonly index: number;
  readonly name: string;
  /** By the client. */
  readonly isAskedFor?: boolean;
  readonly weight: string;
  /** Left of a usual day: new, winter, ten years in winter. A stop has its sentence instead. */
  readonly left: readonly [string, string, string];
  /** Left at ten years in winter in the pinned state. */
  readonly pinned: string;
  /** Hours to put a usual day back, at the first supply; the whole pack where the day takes more than that. */
  readonly refill: string;
  /** From low to high, without the currency. */
  readonly price: string;
  readonly verdict: string;
  /** Why the pack may not be used, in the place of what is left. */
  readonly stop?: string;
}

/** The cells of the table, from the answer alone. A pack that may not be used has its row whether it is asked for or not. */
export function answerTable(
  answer: Answer,
  rows: readonly number[],
  units: UnitHabit,
  pinned?: Pinned,
  charging?: ChargePlan,
  costs?: CostPlan,
): AnswerTable {
  const at = charging?.supplies[0];
  const isPriced = costs?.packs.some(({ quote }) => quote.total);
  return {
    hasPinned: pinned !== undefined,
    ...(at && { refillAt: { power: writeQuantity("electricPower", at.wall_kW, units, 2), place: at.name } }),
    ...(costs && isPriced && { pricesIn: costs.currency }),
    rows: withStops(answer, rows).map((index) => {
      const { name, isAskedFor, mass_kg, left, isAtLeast, verdict, stop } = answer.packs[index];
      const cell = (k: number) => (left ? leftCell(left[CONDITIONS[k]], units, isAtLeast) : "–");
      const before = pinned?.answer.packs.find((pack) => pack.name === name)?.left_km;
      return {
        index,
        name,
        ...(isAskedFor && { isAskedFor }),
        weight: writeQuantity("mass", Math.round(mass_kg), units),
        left: [cell(0), cell(1), cell(2)],
        pinned: before ? leftCell(before.tenYearsWinter, units) : "–",
        refill: refillOf(charging, index),
        price: priceOf(costs, index),
        verdict: stop ? "stop" : (verdict ?? "calculating"),
        ...(stop && { stop: messageIn(stop.sentence, units) }),
      };
    }),
  };
}

function withStops({ packs }: Answer, rows: readonly number[]): number[] {
  const stops = packs.map((_, i) => i).filter((i) => packs[i].stop && !rows.includes(i));
  return [...rows, ...stops];
}

function refillOf(charging: ChargePlan | undefined, index: number): string {
  const row = charging?.rows[index]?.[0];
  if (row?.stop) return "stop";
  if (!row?.usualDay) return "–";
  const { time_h, isMoreThanPack } = row.usualDay;
  return `${quarterHours(time_h)}${isMoreThanPack ? " from empty" : ""}`;
}

function priceOf(costs: CostPlan | undefined, index: number): string {
  const total = costs?.packs[index]?.quote.total;
  return total ? moneyBetween(total, "") : "–";
}
