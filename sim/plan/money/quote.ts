import type { Job } from "../../../shared/job/job.ts";
import type { CellPrice, Costs } from "../../../shared/job/schema/costs.ts";
import { type Message, message } from "../../../shared/quantity/message.ts";
import type { Candidate } from "../driveReport.ts";
import { between, NOTHING, type Span, spanOf, sum, times } from "./span.ts";

/** One line of a quote: what is bought for it and the hours of work in it. */
export interface QuoteLine {
  readonly name: string;
  readonly parts: Span;
  readonly hours: Span;
  /** The hours at the workshop's rate; nothing for none, and while the rate is not known. */
  readonly work: Span;
}

/** The price of a conversion with one pack, in the job's currency. */
export interface Quote {
  readonly pack: string;
  /** The work that is the same for every pack, then the cells. */
  readonly lines: readonly QuoteLine[];
  readonly sum: Span;
  /** None of it where all goes well, all of it on the dearer sum where it does not. */
  readonly contingency: Span;
  readonly vat: Span;
  /** What the client pays; absent while something is not priced. */
  readonly total?: Span;
  /** What is not priced, a sentence each. */
  readonly missing: readonly Message[];
}

/** The quote for each pack of a job. `packs` are its candidates' figures, in their order; packs added since they were driven wait. */
export function quotesOf(
  job: Pick<Job, "packs" | "costs">,
  packs: readonly Candidate["pack"][],
): readonly Quote[] | undefined {
  const { costs } = job;
  if (!costs) return undefined;
  return job.packs.slice(0, packs.length).map((pack, i) => quoteOf(costs, pack, packs[i]));
}

/**
 * The quote for one pack. Low is every line at its low end and nothing of the contingency spent; high is every line at its high end
 * and all of the contingency spent; the value is the middle. VAT, where there is one, is on all of it.
 */
function quoteOf(costs: Costs, pack: Job["packs"][number], figures: Candidate["pack"]): Quote {
  const { work_perh, contingency_frac, vat_frac = 0 } = costs;
  const cells = cellsOf(pack.cellPrice ?? costs.cells, pack, figures);
  const work = costs.work.map(({ name, parts, hours }): QuoteLine => {
    const time = between(hours.low_h, hours.high_h);
    return { name, parts: spanOf(parts), hours: time, work: times(time, work_perh ?? 0) };
  });
  const lines = cells ? [...work, { name: "Cells", parts: cells, hours: NOTHING, work: NOTHING }] : work;
  const whole = sum(...lines.flatMap(({ parts, work: worked }) => [parts, worked]));
  const contingency = between(0, whole.high * contingency_frac);
  const net = between(whole.low, whole.high + contingency.high);
  const vat = times(net, vat_frac);
  const missing = [
    ...(cells ? [] : [message`The price of the cells of ${pack.name} is not entered.`]),
    ...(work_perh === undefined && work.some(({ hours }) => hours.high > 0)
      ? [message`The price of an hour of work is not entered.`]
      : []),
    ...(costs.work.length === 0 ? [message`No work is in the quote yet.`] : []),
  ];
  return {
    pack: pack.name,
    lines,
    sum: whole,
    contingency,
    vat,
    ...(missing.length === 0 && { total: sum(net, vat) }),
    missing,
  };
}

/** What the cells of a pack cost; nothing where that is not entered. A pack of three figures has no modules to be counted. */
export function cellsOf(
  price: CellPrice | undefined,
  pack: Job["packs"][number],
  figures: Pick<Candidate["pack"], "nominal_kWh">,
): Span | undefined {
  if (!price || (price.per === "module" && pack.whole)) return undefined;
  const count = {
    module: pack.seriesModules * pack.parallelModules,
    kWh: figures.nominal_kWh,
    pack: 1,
  }[price.per];
  return times(spanOf(price.price), count);
}
