import { html } from "lit-html";
import { message, messageIn, whole } from "../../shared/quantity/message.ts";
import { quarterHours } from "../../shared/quantity/quarterHours.ts";
import { type ChargeBar, chargeTimes } from "../charts/chargeTimes.ts";
import { paceWords } from "../sections/parts/chargeWords.ts";
import { defineChapter } from "./parts/chapter.ts";

/** How long does a charge take? */
export default defineChapter({
  name: "chargeTimes",
  title: "How long a charge takes",
  working: "charging",
  given: (form) =>
    html`${form.fields("charger.power_kW", ...(form.job.supplies.length > 0 ? ["supplies.0.current_A"] : []))}`,
  inputs: ["job", "chargePlan", "packIndex", "units"],
  compute: ({ job, chargePlan, packIndex, units }) => {
    const rows = chargePlan.rows[packIndex] ?? chargePlan.rows[0];
    const [row] = rows;
    const bars = rows.flatMap(({ supply, emptyToFull, usualDay, winterDay, night }): ChargeBar[] => {
      if (!emptyToFull) return [];
      const hours = { emptyToFull_h: emptyToFull.time_h, night };
      return [{ name: supply, ...hours, usualDay_h: usualDay?.time_h, winterDay_h: winterDay?.time_h }];
    });
    const { night } = row;
    const gives = night?.gives_km;
    const km = gives === undefined ? "" : messageIn(message`${whole("distance", gives)}`, units);
    return {
      pack: row.pack,
      supply: row.supply,
      stop: row.stop && messageIn(row.stop, units),
      usualDay: row.usualDay,
      full: row.emptyToFull && quarterHours(row.emptyToFull.time_h),
      night: night && {
        hours: quarterHours(night.hours_h),
        span: `${night.span.from} to ${night.span.to}`,
        what: night.isCheap ? "cheap hours" : "hours there",
        isEnough: row.winterDay !== undefined && row.winterDay.time_h <= night.hours_h,
        isShort: row.usualDay !== undefined && row.usualDay.time_h > night.hours_h,
        isFull: night.isFull,
        km,
      },
      pace: paceWords(row, job),
      bars,
    };
  },
  sentence: ({ pack, supply, stop, usualDay, full, night, pace }) => {
    if (stop !== undefined) return stop;
    const day =
      usualDay === undefined
        ? `${pack} takes ${full} from empty to full at ${supply}.`
        : usualDay.isMoreThanPack
          ? `A usual day takes all of ${pack}: ${full} at ${supply}.`
          : `With ${pack} a usual day is back in ${quarterHours(usualDay.time_h)} at ${supply}, from empty in ${full}.`;
    if (!night) return `${day} ${pace}`;
    const fits = night.isShort
      ? ` The ${night.what} from ${night.span} (${night.hours}) are too short for it`
      : ` It fits into the ${night.what} from ${night.span}${night.isEnough ? ", in winter too" : ""}`;
    const gives = night.km === "" ? "" : `; from empty they give ${night.km}${night.isFull ? ", the pack full" : ""}`;
    return `${day}${usualDay === undefined ? "" : `${fits}${gives}.`} ${pace}`;
  },
  plot: ({ bars, pack }, drawing) =>
    bars.length === 0
      ? undefined
      : {
          caption: `How long does a charge take? Hours with ${pack}: dark the usual day, lighter the winter’s day, pale from empty to full`,
          chart: chargeTimes(bars, drawing),
        },
});
