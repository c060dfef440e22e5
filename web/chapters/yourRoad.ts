import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../shared/units.ts";
import { steepestPitch } from "../../sim/index.ts";
import { heightProfile } from "../charts/heightProfile.ts";
import { speedTrace } from "../charts/speedTrace.ts";
import { defineChapter } from "./parts/chapter.ts";
import { inTimes, oneIn } from "./parts/inWords.ts";

/** A climb below this in all is level to a driver. */
const LEVEL_m = 5;

/** What road is the answer for? */
export default defineChapter({
  name: "yourRoad",
  title: "Your road",
  working: "theRoad",
  inputs: ["runs", "road", "use", "packIndex", "units"],
  compute: ({ runs, road, use, packIndex, units }) => {
    const { trace } = runs;
    const isHilly = trace.climb_m >= LEVEL_m;
    return {
      title: trace.title,
      distance: writeQuantity("distance", trace.distance_km, units, 2),
      minutes: Math.round(trace.duration_s / 60),
      top: writeQuantity("speed", trace.max_kmh, units, 2),
      climb: isHilly ? writeQuantity("elevation", trace.climb_m, units, 2) : undefined,
      rounds: inTimes(use.usualDay_km / trace.distance_km),
      day: writeQuantity("distance", use.usualDay_km, units, 2),
      profile: isHilly ? road.profile : undefined,
      pitch: isHilly && road.profile ? steepestPitch(road.profile) : undefined,
      length_m: trace.distance_km * M_PER_KM,
      run: runs.candidates[packIndex] ?? runs.candidates[0],
    };
  },
  sentence: ({ title, distance, minutes, top, climb, rounds, day, pitch }) => {
    const hills = climb === undefined ? "and is level" : `and climbs ${climb}`;
    const steepest = pitch ? ` The steepest part is ${oneIn(pitch.grade_ratio)}.` : "";
    return `${title} is ${distance} in ${minutes} minutes, up to ${top}, ${hills}; a usual day of ${day} is ${rounds}.${steepest}`;
  },
  plot: ({ title, profile, pitch, length_m, run }, drawing) => {
    if (profile)
      return {
        caption: "How steep is the road? Its height along the way",
        chart: heightProfile(
          { title, profile, length_m, ...(pitch && { pitch: { ...pitch, words: oneIn(pitch.grade_ratio) } }) },
          drawing,
        ),
      };
    if (!run?.channels) return undefined;
    return {
      caption: "How fast is the road driven? Speed over time",
      chart: speedTrace({ name: run.name, channels: run.channels, along: "time" }, drawing),
    };
  },
});
