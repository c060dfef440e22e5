import { html } from "lit-html";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { defineSection } from "./parts/section.ts";

/** What is the car for, and how far does it go in a day? */
export default defineSection({
  name: "theJob",
  title: "The job",
  question: "What is the car for, and how far does it go in a day?",
  given: (form) =>
    html`${form.fields("title", "client", "workshop", "use")} ${form.fields("usualDay_km", "longestDay_km")}`,
  fields: ["title", "client", "workshop", "use", "usualDay_km", "longestDay_km"],
  inputs: ["job", "units"],
  compute: ({ job, units }) => {
    const format = (day_km: number) => writeQuantity("distance", day_km, units);
    const { usualDay_km, longestDay_km } = job;
    const guesses = Object.values(job.origins).filter(({ from }) => from === "usual" || from === "guessed").length;
    return {
      usual: format(usualDay_km),
      longest: longestDay_km === undefined ? undefined : format(longestDay_km),
      isLongestShorter: longestDay_km !== undefined && longestDay_km < usualDay_km,
      guesses,
    };
  },
  plot: () => [],
  sentence: ({ usual, longest, guesses }) => {
    const day = longest ? `${longest} on the longest day of the year` : "the longest day of the year is not known";
    const open =
      guesses === 0
        ? "No value below is a guess."
        : `${guesses === 1 ? "One value below is" : `${guesses} values below are`} still usual or guessed; “Unknowns” says which move the range.`;
    return `The packs are judged by a usual day of ${usual}; ${day}. ${open}`;
  },
  summary: ({ usual, longest }) => `usual day ${usual}, longest ${longest ?? "not known"}`,
  attention: ({ isLongestShorter }) =>
    isLongestShorter ? ["The longest day of the year is shorter than the usual day: one of the two is wrong."] : [],
});
