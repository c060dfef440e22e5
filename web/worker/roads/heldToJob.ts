import { fetchPart } from "../fetchPart.ts";
import type { MadeRoad } from "./roadsApi.ts";

/**
 * A road that the reader of jobs takes, or its InputError: a week's samples take half a second to check, which the page's
 * thread does not have.
 */
export async function heldToJob(made: MadeRoad): Promise<MadeRoad> {
  const { readRoad } = await fetchPart(() => import("../../../shared/job/readJob.ts"));
  const { title } = readRoad({ ...made.road, id: "road" });
  return { ...made, road: { ...made.road, title } };
}
