import type { PredictedPack } from "../../../shared/job/schema/predictions.ts";
import { PROGRAM_VERSION } from "../../../shared/programVersion.ts";
import { bare, type Message, message, whole } from "../../../shared/quantity/message.ts";
import type { Beside } from "./compare.ts";

/** The day a prediction was frozen, as it is read: 3 March 2026. */
export function frozenOn(at: string): string {
  return new Date(at).toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });
}

/** What stands between a frozen prediction and the job as it is now, a sentence each; the first is always there. */
export function besideWords({ prediction, program, isUnchanged, isWhole, road, changed }: Beside): Message[] {
  const { at, program: version } = prediction;
  const since = isUnchanged
    ? message`Nothing that it depends on has changed since.`
    : message`${changedWords(changed.length, road)}: it stays as it was, and today's figures stand beside it.`;
  return [
    message`As predicted on ${frozenOn(at)} by version ${version}. ${since}`,
    ...(program === "newer"
      ? [
          message`Version ${version} is newer than this program (${PROGRAM_VERSION}): its figures are shown as they were frozen, and what differs today may come from the program; open the job with version ${version} or later to compare the two.`,
        ]
      : []),
    ...(program === "older"
      ? [message`This program is now version ${PROGRAM_VERSION}: what differs may come from the program as well.`]
      : []),
    ...(isWhole === false
      ? [
          message`Its inputs are no longer the ones that were frozen: the job file was changed by hand, so that nothing can be compared with it.`,
        ]
      : []),
  ];
}

const roads: Readonly<Record<Beside["road"], string>> = {
  same: "",
  changed: "its road was changed",
  another: "another road is driven now",
  gone: "its road is no longer in the job",
};

function changedWords(count: number, road: Beside["road"]): string {
  const values = count === 0 ? "" : count === 1 ? "one value has changed since" : `${count} values have changed since`;
  const words = [values, roads[road]].filter((each) => each !== "").join(" and ");
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** The range of a predicted pack, new, as a band: "64 to 76 km". Nothing where it drives no road. */
export function rangeWords({ range_km, isAtLeast }: PredictedPack, condition = "new"): Message | undefined {
  const range = range_km?.[condition];
  if (!range) return undefined;
  const { low, high, value } = range;
  if (isAtLeast) return message`at least ${whole("distance", value)}`;
  const isPoint = high - low < 1;
  return isPoint
    ? message`${whole("distance", value)}`
    : message`${bare(whole("distance", low))} to ${whole("distance", high)}`;
}
