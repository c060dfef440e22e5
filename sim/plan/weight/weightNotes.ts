import type { Job } from "../../../shared/job/job.ts";
import type { Weights } from "../../../shared/job/schema/weights.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { axleLoads, converted, overloads } from "./weigh.ts";

/** Lists and sums may differ by so much before it is said. Assumed. */
const AGREE_kg = 5;
/** The share on the front axle that grip goes by may differ by so much. Assumed. */
const AGREE_frac = 0.03;

/** What a person must know of the weights: lists that do not sum to what the job drives with, and masses that lighten the steering. */
export function weightNotes(job: Job, weights: Weights): Message[] {
  return [...listNotes(job, weights), ...boxNotes(weights), ...balanceNotes(job, weights)];
}

function listNotes({ vehicle }: Job, weights: Weights): Message[] {
  if (vehicle.converted_kg !== undefined) return []; // weighed as converted: the sums are not driven with
  const sum = (items: readonly { readonly mass_kg: number }[]) =>
    items.reduce((total, { mass_kg }) => total + mass_kg, 0);
  const lists = [
    ["comes out", sum(weights.out), vehicle.removed_kg],
    ["goes in", sum(weights.in), vehicle.added_kg],
  ] as const;
  return lists.flatMap(([what, listed_kg, driven_kg]) =>
    Math.abs(listed_kg - driven_kg) > AGREE_kg
      ? [
          message`What ${what} sums to ${q("mass", listed_kg)} here, and the car is driven with ${q("mass", driven_kg)}: one of the two is out of date.`,
        ]
      : [],
  );
}

function boxNotes({ boxes, wheelbase_mm }: Weights): Message[] {
  const behind = boxes
    .filter(({ place_mm, share_frac }) => place_mm > wheelbase_mm && share_frac > 0)
    .map(({ name }) => `“${name}”`);
  if (behind.length === 0) return [];
  const lightens = "takes weight off the front wheels and lightens the steering";
  if (behind.length === 1) return [message`The box ${behind[0]} sits behind the rear axle: what is in it ${lightens}.`];
  return [
    message`The boxes ${behind.slice(0, -1).join(", ")} and ${behind[behind.length - 1]} sit behind the rear axle: what is in them ${lightens}.`,
  ];
}

/** Plates that the car is over without any pack, which are likely not the car's own: to be said before what a pack does. */
export function plateNotes(weights: Weights): Message[] {
  return overloads(converted(weights), weights).map(
    ({ what, by_kg }) =>
      message`Without any pack the car is already ${q("mass", by_kg, 2)} over its limit (${what}): check the plate.`,
  );
}

/** The balance that grip goes by, against the axles of the heaviest pack laden. */
function balanceNotes(job: Job, weights: Weights): Message[] {
  const { balance } = job.vehicle;
  const laden = axleLoads(job, weights).filter(({ name }) => name === "fully laden");
  if (balance === undefined || laden.length === 0) return [];
  const heaviest = laden.reduce((a, b) => (b.total_kg > a.total_kg ? b : a));
  if (Math.abs(heaviest.frontShare_frac - balance.frontShare_frac) <= AGREE_frac) return [];
  return [
    message`Fully laden with ${heaviest.pack ?? ""} the front axle carries ${q("fraction", heaviest.frontShare_frac, 2)} of the weight; grip on hills goes by ${q("fraction", balance.frontShare_frac, 2)} (weight balance).`,
  ];
}
