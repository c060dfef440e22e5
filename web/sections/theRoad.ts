import { html } from "lit-html";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { speedTrace } from "../charts/speedTrace.ts";
import { viewChoice } from "../fields/viewChoice.ts";
import { packChoice } from "../forms/pack/packChoice.ts";
import { roadsForm } from "../forms/road/roadsForm.ts";
import { findingsOf } from "./parts/findingsOf.ts";
import { keptMap, logWorked } from "./parts/logWorked.ts";
import { defineSection } from "./parts/section.ts";

/** Findings of a car that does not drive its road, the plainest first. */
const CANNOT = ["doesNotStart", "stopsOnRoad", "traceNotFollowed", "reachedFloor", "stuck", "noRange"];

/** Which road is driven, and does the car keep up with it? */
export default defineSection({
  name: "theRoad",
  title: "Road",
  question: "Which road is driven, and does the car keep up with it?",
  given: (form) =>
    html`${form.fields(
      viewChoice(
        "view-road",
        "The road to drive",
        form.job.roads.map(({ id, title }) => ({ key: id, words: title })),
        form.view.roadId.value,
        (id) => {
          form.jobEditor.editPlain("drivenRoad", id, "The road to drive");
          form.jobEditor.settle();
        },
      ),
      viewChoice(
        "view-along",
        "Figures along the road go by",
        [
          { key: "time", words: "time" },
          { key: "distance", words: "distance" },
        ],
        form.view.along.value,
        (key) => {
          form.view.along.value = key === "distance" ? "distance" : "time";
        },
      ),
      packChoice(form, "view-pack-road"),
    )}
    ${roadsForm(form)}`,
  fields: ["roads"],
  explains: ["missed_km"],
  inputs: ["runs", "packIndex", "along", "units", "use", "road", "logInView", "keptTrack"],
  compute: ({ runs, packIndex, along, units, use, road, logInView, keptTrack }) => {
    const format = (kind: "distance" | "speed" | "elevation", value: number) => writeQuantity(kind, value, units);
    const { trace, candidates } = runs;
    return {
      run: candidates[packIndex] ?? candidates[0],
      along,
      title: trace.title,
      minutes: Math.round(trace.duration_s / 60),
      distance: format("distance", trace.distance_km),
      mean: format("speed", trace.mean_kmh),
      top: format("speed", trace.max_kmh),
      climb: trace.climb_m >= 1 ? format("elevation", trace.climb_m) : undefined,
      descent: trace.descent_m >= 1 ? format("elevation", trace.descent_m) : undefined,
      log: logInView && { shown: logInView, units, job: use, candidates },
      kept: keptTrack && { keptTrack, road },
      missing: findingsOf(candidates, CANNOT, units),
      there: findingsOf(candidates, ["thereAndBack"], units),
    };
  },
  *plot({ run, along, title, log, kept }, drawing) {
    if (run?.channels) {
      const chart = speedTrace({ name: run.name, channels: run.channels, along }, drawing);
      yield {
        name: "speed",
        caption: `Does the car keep up with the road? Speed on ${title} with ${run.name}, and the speed wanted where it was missed`,
        chart,
      };
    }
    if (kept) yield { ...keptMap({ ...kept, channels: run?.channels }, drawing), name: "map" };
    if (log) yield* logWorked(log, drawing);
  },
  sentence: ({ title, minutes, distance, mean, top, climb, descent, missing, there }) => {
    const hills = climb ? `, ${climb} of climbing` : descent ? `, ${descent} down and no climb` : ", level";
    const kept = missing.length === 0 ? "Every pack keeps up with it." : "Not every pack keeps up with it.";
    const road = `${title}: ${distance} in ${minutes} minutes, average ${mean}, at most ${top}${hills}.`;
    return [road, ...there, kept].join(" ");
  },
  summary: ({ title, distance, top, climb }) =>
    `${title}: ${distance}, up to ${top}, ${climb ? `climbs ${climb}` : "level"}`,
  attention: ({ missing }) => missing,
});
