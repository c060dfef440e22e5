import type { Job } from "../../../shared/job/job.ts";
import type { Alternative, Running } from "../../../shared/job/schema/costs.ts";
import { type Message, message } from "../../../shared/quantity/message.ts";
import type { ChargePlan } from "../charging/chargePlan.ts";
import type { Candidate } from "../driveReport.ts";
import { fuelCarbon_gpl } from "./carbon.ts";
import { type Electricity, electricityAt } from "./electricity.ts";
import { type Payback, paybackOf, paysFrom_km, spentBy, type Way } from "./payback.ts";
import { type Quote, quotesOf } from "./quote.ts";
import { firstYear, runningConverted, runningNow } from "./running.ts";
import { less, NOTHING, type Span, spanOf, times } from "./span.ts";

/** One pack compared with the alternative at one yearly distance. */
export interface YearlyCosts {
  readonly distance_km: number;
  /** Running costs of the first year, as converted and as compared with. */
  readonly running: Span;
  readonly runningOther: Span;
  /** What the conversion saves in the first year; costs more where negative. */
  readonly saves: Span;
  /** All spent by the end of each year, the first entry before any is driven. */
  readonly spent: readonly Span[];
  readonly spentOther: readonly Span[];
  readonly payback: Payback;
}

/** Money and carbon of one pack. */
export interface PackCosts {
  readonly quote: Quote;
  /** More than the alternative costs at once; less where negative. */
  readonly extra?: Span;
  /** At each supply where it is charged. */
  readonly electricity: readonly Electricity[];
  /** At each yearly distance, the client's own first; none while something is missing. */
  readonly yearly: readonly YearlyCosts[];
  /** The yearly distance from which it pays back within the years; nothing where none does. */
  readonly paysFrom_km?: number;
  /** Carbon dioxide of the electricity for a kilometre; nothing without a grid factor. */
  readonly carbon_gpkm?: Span;
  /** Why there is no price or no payback, a sentence each. */
  readonly missing: readonly Message[];
}

/** What the client would do without the conversion. */
export interface AlternativeCosts {
  readonly name: string;
  readonly price: Span;
  readonly isNeededAnyway: boolean;
  /** Nobody typed it: the car stays as it is. */
  readonly isAsItIs: boolean;
  /** Of the first year, at each yearly distance. */
  readonly running: readonly Span[];
  readonly spent: readonly (readonly Span[])[];
}

/** All of a job's money. */
export interface CostPlan {
  readonly currency: string;
  readonly running?: Running;
  readonly alternatives: readonly AlternativeCosts[];
  /** The alternative that the packs are compared with: the first that is needed anyway, or leaving the car as it is. */
  readonly against: AlternativeCosts;
  readonly packs: readonly PackCosts[];
  /** Carbon dioxide of the fuel burnt now, for a kilometre. */
  readonly fuelCarbon_gpkm?: number;
}

/** What of a job its money hangs on. */
export type CostJob = Pick<Job, "packs" | "costs" | "currency" | "usualDay_km" | "allowance" | "origins">;

/**
 * Price, running costs and payback of every pack of a job. `candidates` are the drives of its packs and `charging` their charges, in
 * their order. Nothing for a job without costs.
 */
export function costPlan(
  job: CostJob,
  candidates: readonly Candidate[],
  charging: Pick<ChargePlan, "rows">,
): CostPlan | undefined {
  const { costs } = job;
  const quotes = quotesOf(
    job,
    candidates.slice(0, charging.rows.length).map(({ pack }) => pack),
  );
  if (!costs || !quotes) return undefined;
  const { running } = costs;
  const ways = waysOf(job);
  const alternatives = ways.map((way) => alternativeCosts(way, running));
  const at = Math.max(
    0,
    ways.findIndex(({ isNeededAnyway }) => isNeededAnyway),
  );
  const against = alternatives[at];
  return {
    currency: job.currency ?? "",
    ...(running && { running, fuelCarbon_gpkm: (running.use_l100km / 100) * fuelCarbon_gpl(running.fuel) }),
    alternatives,
    against,
    packs: quotes.map((quote, i) =>
      packCosts({ job, quote, candidate: candidates[i], rows: charging.rows[i], way: ways[at], against }),
    ),
  };
}

interface NamedWay extends Partial<Way> {
  readonly name: string;
  readonly price: Span;
  readonly isNeededAnyway: boolean;
  readonly isAsItIs: boolean;
}

/** Leaving the car as it is, then what was typed. */
function waysOf(job: CostJob): readonly NamedWay[] {
  const { running, alternatives = [] } = job.costs ?? {};
  const asItIs = { name: "leaving it as it is", price: NOTHING, isNeededAnyway: false, isAsItIs: true };
  const typed = alternatives.map(({ name, price, isNeededAnyway, running: own }) => ({
    name,
    isNeededAnyway,
    isAsItIs: false,
    price: spanOf(price),
    ...runningOf(running, job, own),
  }));
  return [{ ...asItIs, ...runningOf(running, job) }, ...typed];
}

function runningOf(
  running: Running | undefined,
  job: CostJob,
  own?: Alternative["running"],
): Pick<NamedWay, "running"> {
  const costs = running && runningNow(running, job, own);
  return costs ? { running: costs } : {};
}

function alternativeCosts(way: NamedWay, running: Running | undefined): AlternativeCosts {
  const { name, price, isNeededAnyway, isAsItIs, running: costs } = way;
  const distances_km = running && costs ? running.yearly.map(({ distance_km }) => distance_km) : [];
  return {
    name,
    price,
    isNeededAnyway,
    isAsItIs,
    running: costs ? distances_km.map((distance_km) => firstYear(costs, distance_km)) : [],
    spent:
      running && costs
        ? distances_km.map((distance_km) => spentBy({ price, running: costs }, distance_km, ...horizon(running)))
        : [],
  };
}

interface PackInput {
  readonly job: CostJob;
  readonly quote: Quote;
  readonly candidate: Candidate;
  readonly rows: ChargePlan["rows"][number];
  readonly way: NamedWay;
  readonly against: AlternativeCosts;
}

function packCosts({ job, quote, candidate, rows, way, against }: PackInput): PackCosts {
  const running = job.costs?.running;
  const electricity = rows.flatMap((row) => electricityAt(row, candidate, job) ?? []);
  const usual = electricity.find(({ supply }) => supply === rows[0]?.supply);
  const { total } = quote;
  const costPerKm = usual?.costPerKm;
  const missing = [
    ...quote.missing,
    ...(running ? withoutPrice(quote.pack, rows[0], usual) : [message`Fuel and running costs are not entered.`]),
    ...(running && running.price_perl === undefined ? [message`The price of fuel is not entered.`] : []),
  ];
  const grid_gpkWh = running?.grid_gpkWh;
  const base = {
    quote,
    electricity,
    missing,
    ...(total && { extra: less(total, against.price) }),
    ...(usual && grid_gpkWh !== undefined && { carbon_gpkm: times(usual.wall_kWhpkm, grid_gpkWh) }),
  };
  if (!running || !total || !costPerKm || !way.running) return { ...base, yearly: [] };
  const converted: Way = { price: total, running: runningConverted(running, job, costPerKm) };
  const other: Way = { price: way.price, running: way.running };
  const from_km = paysFrom_km(converted, other, ...horizon(running));
  return {
    ...base,
    ...(from_km !== undefined && { paysFrom_km: from_km }),
    yearly: running.yearly.map(({ distance_km }, k): YearlyCosts => {
      const spent = spentBy(converted, distance_km, ...horizon(running));
      const spentOther = against.spent[k];
      const first = { running: firstYear(converted.running, distance_km), other: against.running[k] };
      return {
        distance_km,
        running: first.running,
        runningOther: first.other,
        saves: less(first.other, first.running),
        spent,
        spentOther,
        payback: paybackOf(spent, spentOther),
      };
    }),
  };
}

function horizon({ years, discount_frac = 0 }: Running): readonly [years: number, discount_frac: number] {
  return [years, discount_frac];
}

function withoutPrice(
  pack: string,
  row: ChargePlan["rows"][number][number] | undefined,
  usual: Electricity | undefined,
): Message[] {
  if (row?.stop) return [row.stop];
  if (!usual) return [message`${pack} does not drive this road, so what its electricity costs is not known.`];
  if (usual.costPerKm) return [];
  return [message`The price of a kWh at ${usual.supply} is not entered.`];
}
