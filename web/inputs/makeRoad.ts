import type { Origin } from "../../shared/job/job.ts";
import type { Answer, MadeRoad, RoadsApi } from "../worker/roadsApi.ts";
import { attempt } from "./attempt.ts";
import type { Form } from "./form.ts";
import { freeRoadId, type RoadOrigin, withRoad } from "./takeRoad.ts";

/** Asks for a road, puts it into the job as one step, and drives it; what speaks against it stays at `place`. */
export async function makeRoad(
  form: Form,
  place: string,
  kind: RoadOrigin,
  origin: Origin,
  ask: (room: RoadsApi) => Promise<Answer<MadeRoad>>,
): Promise<boolean> {
  const { log, refused } = form.view.bench;
  const made = await log.make(ask);
  if (!made) {
    refused.value = { ...refused.value, [place]: log.refused.value.join("; ") };
    log.refused.value = [];
    return false;
  }
  const id = freeRoadId(form.desk.job.value, kind);
  const { title } = made.road;
  if (!attempt(form, place, `Road: ${title}`, (sheet) => withRoad(sheet, made, id, origin))) return false;
  form.view.roadId.value = id;
  return true;
}
