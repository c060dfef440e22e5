// The work on logs and roads as a worker does it: a piece of its own, as the answer does without.
import { transfer } from "comlink";
import { openMeasuring, openRoutes } from "../../../sim/index.ts";
import { fetchPart } from "../fetchPart.ts";
import { cycleText } from "./cycleText.ts";
import { createLogSession } from "./logSession.ts";
import type { PieceView, RoadsApi } from "./roadsApi.ts";

const session = createLogSession(
  () => fetchPart(openRoutes),
  cycleText,
  () => fetchPart(openMeasuring),
);

/** All that is asked of a client's logs and of making roads; columns are handed over. */
export const logWork: Omit<RoadsApi, "job"> = {
  ...session,
  async view(piece) {
    const answer = await session.view(piece);
    return answer.kind === "done" ? transfer(answer, columnsOf(answer.value)) : answer;
  },
};

function columnsOf({ raw, cleaned, track }: PieceView): ArrayBuffer[] {
  const columns: Iterable<ArrayBufferView> = [raw, cleaned, track ?? {}].flatMap((group) => Object.values(group));
  return [...columns].flatMap(({ buffer }) => (buffer instanceof ArrayBuffer ? [buffer] : []));
}
