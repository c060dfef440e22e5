import type { Job } from "../../../../shared/job/job.ts";
import type { Road } from "../../../../shared/job/schema/road.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { SimulationApi } from "../../../worker/api.ts";
import type { Definition } from "../graph.ts";
import { remembering } from "../remembering.ts";

/** The road that is driven, and the packs driven over it. */
export function roadValues(simulation: SimulationApi): Definition[] {
  const sameRoads = remembering((whole: Job) => whole.roads);
  return [
    { name: "roads", inputs: ["job"], compute: (values: Values) => sameRoads(values.job) },
    {
      name: "roadInJob",
      inputs: ["roads", "roadId"],
      compute: ({ roads, roadId }: Values & { roads: Job["roads"] }) =>
        roads.find(({ id }) => id === roadId) ?? roads[0],
    },
    {
      name: "road",
      inputs: ["roadInJob"],
      ask: ({ roadInJob }: Values & { roadInJob: Road }) => simulation.road(roadInJob),
    },
    {
      name: "runs",
      inputs: ["machine", "road"],
      ask: (values: Values) => simulation.drive(values.machine, values.road),
    },
  ];
}
