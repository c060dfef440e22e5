import type { Job } from "../../../shared/job/job.ts";
import { formatNumber } from "../../../shared/quantity/formatNumber.ts";
import { type Message, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import type { Trace } from "../../trace/trace.ts";
import { chargePlan } from "../charging/chargePlan.ts";
import { cellsOf } from "../money/quote.ts";
import { between, type Span } from "../money/span.ts";
import { inSentence } from "./inSentence.ts";
import type { Judged } from "./judgePack.ts";
import { type Layout, type Layouts, layoutsOf } from "./layoutsOf.ts";
import type { RuledOut } from "./ruledOut.ts";
import { type Smallest, smallestPack } from "./smallestPack.ts";

/** What one pack more would bring beside another, and cost. */
export interface Added {
  readonly range_km: number;
  readonly mass_kg: number;
  readonly battery_Whpkm: number;
  /** Of the cells, in the job's currency. */
  readonly cost?: Span;
  /** From empty to full at the job's first supply; absent where one of them is not charged there. */
  readonly charge_h?: number;
}

/** Which of all packs of the job's module is the smallest that will do, and why not a smaller one. */
export interface PackChoice {
  readonly layouts: Layouts;
  readonly found: Smallest;
  /** Where no smaller pack fits: the largest of those that are ruled out by other than their volts. */
  readonly outSmaller?: Layout & { readonly out: RuledOut };
  /** What the next larger one would add to the smallest. */
  readonly adds?: Added;
  readonly sentences: readonly Message[];
}

/** Every layout of a job's module and the smallest pack among them that meets what is asked. */
export function packChoice(job: Job, trace: Trace): PackChoice {
  const layouts = layoutsOf(job, trace);
  const found = smallestPack(job, trace, layouts);
  const { smallest, nextSmaller, nextLarger } = found;
  const adds = smallest && nextLarger && addedBy(job, smallest, nextLarger);
  const outSmaller = smallest && !nextSmaller ? outBelow(layouts, smallest) : undefined;
  return {
    layouts,
    found,
    ...(outSmaller && { outSmaller }),
    ...(adds && { adds }),
    sentences: choiceWords(job, layouts, found, adds, outSmaller?.out),
  };
}

function addedBy(job: Job, small: Judged, large: Judged): Added {
  const { rows } = chargePlan({ ...job, packs: [small.pack, large.pack] }, [small.candidate, large.candidate]);
  const [before_h, after_h] = rows.map(([row]) => row.emptyToFull?.time_h);
  const [from, to] = [small.candidate, large.candidate];
  const [first, second] = [small, large].map(({ pack, candidate }) =>
    cellsOf(pack.cellPrice ?? job.costs?.cells, pack, candidate.pack),
  );
  const cost = first && second && between(second.low - first.low, second.high - first.high);
  return {
    range_km: (large.left_km?.value ?? 0) - (small.left_km?.value ?? 0),
    mass_kg: to.pack.mass_kg - from.pack.mass_kg,
    battery_Whpkm: to.battery_Whpkm - from.battery_Whpkm,
    ...(cost && { cost }),
    ...(before_h !== undefined && after_h !== undefined && { charge_h: after_h - before_h }),
  };
}

/** Volts that no number of strings changes: layouts ruled out by these are no smaller choice. */
const VOLTS = /Controller$|Charger$|Converter$/;

/** Where no smaller pack fits: the largest of those that more strings would have made fit. */
function outBelow({ all }: Layouts, { candidate }: Judged): PackChoice["outSmaller"] {
  const below = all.flatMap((layout) => {
    const { figures, out } = layout;
    const isBelow = out && !VOLTS.test(out.fault) && figures.nominal_kWh < candidate.pack.nominal_kWh;
    return isBelow ? [{ ...layout, out }] : [];
  });
  return below.sort((a, b) => b.figures.nominal_kWh - a.figures.nominal_kWh).at(0);
}

/** The outcome in sentences that hold for its numbers. */
function choiceWords(
  { currency }: Pick<Job, "currency">,
  { modulesMost }: Layouts,
  found: Smallest,
  adds: Added | undefined,
  below: RuledOut | undefined,
): Message[] {
  const { smallest, nextSmaller, nextLarger, nearest } = found;
  if (smallest) {
    return [
      message`${named(smallest)} is the smallest that will do. ${smallest.why}`,
      nextSmaller
        ? message`Why not ${named(nextSmaller)}: ${inSentence(nextSmaller.why)}`
        : below
          ? message`No smaller one fits this car. ${below.reason}.`
          : message`No smaller one fits this car.`,
      nextLarger && adds ? addedWords(smallest, nextLarger, adds, currency) : message`No larger one does it as well.`,
    ];
  }
  if (nearest === undefined)
    return [message`None of up to ${modulesMost} modules fits this car: the reasons are in the list.`];
  return [
    message`None of the packs that fit, up to ${modulesMost} modules, does what is asked.`,
    message`${named(nearest)} comes nearest: ${inSentence(nearest.why)}`,
    ...changeWords(nearest),
  ];
}

function addedWords(
  small: Judged,
  large: Judged,
  { range_km, mass_kg, charge_h, cost }: Added,
  currency = "",
): Message {
  const longer = charge_h === undefined ? message`` : message`, and charges ${charge_h.toFixed(1)} h longer`;
  // Prices of cells are known to two figures at best.
  const amount = (value: number) => formatNumber(value, 2);
  const dearer = cost
    ? ` Its cells cost ${[...new Set([amount(cost.low), amount(cost.high)])].join(" to ")}${currency === "" ? "" : ` ${currency}`} more.`
    : "";
  const [before, after] = [small, large].map(({ candidate }) => q("energyUse", candidate.battery_Whpkm));
  return message`${named(large)} would go ${whole("distance", range_km)} further, weighs ${whole("mass", mass_kg, "nearest")} more, takes ${after} in place of ${before}${longer}.${dearer}`;
}

/** What would have to change for the nearest to do it. */
function changeWords({ spare_km, left_km }: Judged): Message[] {
  if (!Number.isFinite(spare_km) || !left_km) return [];
  return [
    message`It would do with ${whole("distance", -spare_km, "up")} less a day or with a charge on the way, or with more modules than are looked at or may be carried.`,
  ];
}

/** A pack by its layout and energy: 5s3p (12.6 kWh). */
function named({ candidate, pack }: Judged): Message {
  return pack.whole ? message`${pack.name}` : message`${pack.name} (${q("energy", candidate.pack.nominal_kWh)})`;
}
