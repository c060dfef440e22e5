import type { Job } from "../../../shared/job/job.ts";
import { messageIn } from "../../../shared/quantity/message.ts";
import type { CostPlan, PackCosts, YearlyCosts } from "../../plan/money/costPlan.ts";
import { BESIDES, costNotes, costSentences } from "../../plan/money/costWords.ts";

/** What `costs` prints with --json: every amount with a band as value, low and high, in the job's currency. */
export function costsJson(job: Job, road: string, plan: CostPlan) {
  const { running, against, alternatives, packs } = plan;
  const inWords = (sentence: Parameters<typeof messageIn>[0]) => messageIn(sentence, "metric");
  return {
    job: job.title,
    road,
    currency: job.currency ?? null,
    years: running?.years ?? null,
    discount_frac: running?.discount_frac ?? 0,
    against: against.name,
    fuelCarbon_gpkm: plan.fuelCarbon_gpkm ?? null,
    alternatives: alternatives.map(({ name, price, isNeededAnyway, running: first, spent }) => ({
      name,
      price,
      isNeededAnyway,
      yearly: first.map((running, k) => ({
        distance_km: plan.running?.yearly[k]?.distance_km ?? null,
        running,
        spent: spent[k] ?? [],
      })),
    })),
    packs: packs.map((pack) => ({ ...packJson(pack), sentences: costSentences(plan, pack).map(inWords) })),
    notes: [...costNotes(plan), BESIDES].map(inWords),
  };
}

function packJson({ quote, extra, electricity, yearly, paysFrom_km, carbon_gpkm, missing }: PackCosts) {
  return {
    name: quote.pack,
    price: quote.total ?? null,
    extra: extra ?? null,
    quote: { lines: quote.lines, sum: quote.sum, contingency: quote.contingency, vat: quote.vat },
    electricity: electricity.map(({ supply, wall_kWhpkm, costPerKm }) => ({
      supply,
      wall_kWhpkm,
      costPerKm: costPerKm ?? null,
    })),
    yearly: yearly.map(yearJson),
    paysFrom_km: paysFrom_km ?? null,
    carbon_gpkm: carbon_gpkm ?? null,
    missing: missing.map((each) => messageIn(each, "metric")),
  };
}

function yearJson({ distance_km, running, saves, spent, payback }: YearlyCosts) {
  return {
    distance_km,
    running,
    saves,
    spent,
    payback_years: {
      value: payback.value_years ?? null,
      low: payback.early_years ?? null,
      high: payback.late_years ?? null,
    },
  };
}
