import type { Job } from "../../../../shared/job/job.ts";
import { steadySpeeds_kmh } from "../../../sections/parts/steadySpeeds.ts";
import type { Values } from "../../../sections/parts/values.ts";
import type { SimulationApi } from "../../../worker/api.ts";
import type { Definition } from "../graph.ts";
import { packIn } from "../packIn.ts";
import { remembering } from "../remembering.ts";

/** What motor, gears and cables meet. */
export function motorValues(simulation: SimulationApi): Definition[] {
  const sameWithEngine = remembering(({ job: { engine }, machine }: Values) => ({
    ...machine,
    ...(engine && { engine }),
  }));
  const sameWiring = remembering(({ wiring }: Job) => ({ wiring }));
  return [
    {
      name: "steady",
      inputs: ["machine", "units"],
      ask: (values: Values) => simulation.steady(values.machine, steadySpeeds_kmh(values.units)),
    },
    { name: "withEngine", inputs: ["job", "machine"], compute: (values: Values) => sameWithEngine(values) },
    {
      name: "gearbox",
      inputs: ["withEngine", "packIndex", "road"],
      ask: (values: Values & { withEngine: Job }) =>
        simulation.gearbox(values.withEngine, packIn(values.withEngine, values.packIndex), values.road),
    },
    {
      name: "heatLines",
      inputs: ["withEngine", "packIndex", "road", "gearbox", "isHeatOpen"],
      waitsFor: ["gearbox"],
      ask: async (values: Values & { withEngine: Job; isHeatOpen: boolean }) =>
        values.isHeatOpen
          ? simulation.heatLines(
              values.withEngine,
              packIn(values.withEngine, values.packIndex),
              values.road,
              values.gearbox.heat.study.hill,
            )
          : [],
    },
    {
      name: "motorSurface",
      inputs: ["drivetrain", "packIndex"],
      ask: (values: Values & { drivetrain: Job }) =>
        simulation.motorSurface(values.drivetrain, packIn(values.drivetrain, values.packIndex)),
    },
    { name: "wiring", inputs: ["job"], compute: (values: Values) => sameWiring(values.job) },
    {
      name: "currentsPlan",
      inputs: ["machine", "wiring", "packIndex", "road"],
      ask: ({ machine, wiring, packIndex, road }: Values & { wiring: Pick<Job, "wiring"> }) =>
        simulation.currents({ ...machine, ...wiring }, packIn(machine, packIndex), road),
    },
  ];
}
