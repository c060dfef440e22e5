import type { DecidingState } from "../../../shared/job/job.ts";
import type { Road } from "../../../shared/job/schema/road.ts";
import { canonicalJson } from "../../math/canonicalJson.ts";
import { sha256 } from "../../math/sha256.ts";

const roadDigests = new WeakMap<Road, string>();

/** The digest of a road as it lies in a job, without its name: the same for the same drive. Found once for each road object. */
export function roadDigest(road: Road): string {
  const known = roadDigests.get(road);
  if (known !== undefined) return known;
  const { title: _title, ...drive } = road;
  const digest = sha256(canonicalJson(drive));
  roadDigests.set(road, digest);
  return digest;
}

/** The digest of all that a prediction is made from: what of the job decides, and the road. */
export function inputDigest(state: DecidingState, road: string): string {
  return sha256(canonicalJson({ state, road }));
}
