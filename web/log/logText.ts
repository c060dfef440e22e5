import type { Problem } from "../../shared/problems.ts";
import type { Question, RepairKind } from "../../sim/index.ts";

/** Options of the command line as the page calls them. */
const optionWords: readonly (readonly [string, string])[] = [
  ["--speed-unit", "the unit of speed"],
  ["--hemisphere", "the half of the globe"],
  ["--interval", "the time between rows"],
  ["--date", "the date"],
  ["--vehicle", "the car"],
];

/** A problem of a log as a sentence of the page, without its full stop. */
export function problemWords({ where, message }: Problem): string {
  const words = optionWords.reduce((text, [option, page]) => text.replaceAll(option, page), `${where}: ${message}`);
  return words.replace(/\.$/, "");
}

/** Each class of repair: what it does, for the list that it can be left out of. */
export const repairWords: Readonly<Record<RepairKind, string>> = {
  clockChange: "Changes of the clock undone",
  backwardTime: "Fixes put in order of time",
  duplicate: "Repeated fixes dropped",
  zeroFix: "Positions at 0,0 dropped",
  wildFix: "Wild positions dropped",
  multipath: "Sideways steps of the position cut out",
  tunnel: "Gaps bridged as tunnels",
  signalLoss: "Gaps from lost signal bridged",
  parked: "Parking without a log split off",
  standingDrift: "A standing car held still",
  speedScale: "Scale of the recorded speed corrected",
  speedNoise: "Speed smoothed",
  acceleration: "Speed held to what a car can do",
  heightStep: "Steps of the height taken out",
  heightNoise: "Height smoothed",
  gradient: "Slopes held to the steepest roads there are",
};

/** Questions that a log of a road may leave open, as they are asked; which way amps count matters to no road. */
export const questionWords: Readonly<Partial<Record<Question["name"], string>>> = {
  vehicle: "Car to read",
  speedUnit: "Unit of the recorded speed",
  hemisphere: "Half of the globe",
  interval: "Seconds from one row to the next",
  date: "Day of the first row",
};

/** `Fri 3 May 2024`; days of a log that counts from its start are numbered. */
export function dayWords(date: string): string {
  const day = new Date(`${date}T00:00:00Z`);
  if (date.startsWith("1970-")) return `day ${1 + Math.round(day.getTime() / 86_400_000)}`;
  return dayFormat.format(day).replace(",", "");
}

// Made once: a week's log has hundreds of these words, and each new one of its kind takes the browser about 0.1 ms.
const dayFormat = new Intl.DateTimeFormat("en-GB", {
  weekday: "short",
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});
