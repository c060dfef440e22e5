import type { Origin } from "../../../shared/job/job.ts";
import { attempt } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { freeRoadId, namedRoad, type RoadOrigin, withRoad } from "../../log/takeRoad.ts";
import type { Answer, MadeRoad, RoadsApi } from "../../worker/roads/roadsApi.ts";

/** Asks for a road, puts it into the job as one step, and drives it; what speaks against it stays at `place`. */
export async function makeRoad(
  form: Form,
  place: string,
  kind: RoadOrigin,
  origin: Origin,
  ask: (roads: RoadsApi) => Promise<Answer<MadeRoad>>,
): Promise<boolean> {
  const { log, refused } = form.view.staging;
  const made = await log.make(ask);
  if (!made) {
    refused.value = { ...refused.value, [place]: log.refused.value.join("; ") };
    log.refused.value = [];
    return false;
  }
  const id = freeRoadId(form.jobEditor.job.value, kind);
  const road = namedRoad(made, id);
  return attempt(form, place, `Road: ${road.title}`, (state) => withRoad(state, road, origin), [road]);
}
