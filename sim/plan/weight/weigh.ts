import type { Job } from "../../../shared/job/job.ts";
import type { Weights } from "../../../shared/job/schema/weights.ts";
import { weighedAxles } from "../../../shared/job/weighedAxles.ts";
import { MM_PER_M } from "../../../shared/units.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import { type AxleLoads, gravityPlace_m, withMass } from "../../vehicle/axleLoads.ts";

/** A plate or a tyre load that is exceeded, and by how much. */
export interface Over {
  readonly what: "front axle" | "rear axle" | "gross" | "front tyres" | "rear tyres";
  readonly by_kg: number;
}

/** The car on its axles in one state. */
export interface Load extends AxleLoads {
  readonly name: "as it arrived" | "empty" | "driver alone" | "fully laden" | "fully laden, towing";
  /** Absent for the car as it arrived. */
  readonly pack?: string;
  readonly total_kg: number;
  readonly frontShare_frac: number;
  readonly gravityPlace_mm: number;
  readonly over: readonly Over[];
}

/** Loads of the axles as it arrived, and with each pack: empty, with its driver, fully laden, and towing where it tows. */
export function axleLoads(job: Pick<Job, "packs" | "module">, weights: Weights): Load[] {
  const arrived = loadOf("as it arrived", weighedAxles(weights), weights);
  return [arrived, ...job.packs.flatMap((pack) => packLoads(weights, pack.name, packMass_kg(pack, job.module)))];
}

/** Loads of the axles with a pack of `pack_kg`: empty, with its driver, fully laden, and towing where it tows. */
export function packLoads(weights: Weights, pack: string, pack_kg: number): Load[] {
  const { driver, load, ball, boxes } = weights;
  const empty = boxes.reduce(
    (at, { place_mm, share_frac }) => put(at, weights, pack_kg * share_frac, place_mm),
    converted(weights),
  );
  const driven = driver ? put(empty, weights, driver.mass_kg, driver.place_mm) : empty;
  const laden = load.reduce((at, { mass_kg, place_mm }) => put(at, weights, mass_kg, place_mm), driven);
  const states: Load[] = [loadOf("empty", empty, weights, pack)];
  if (driver) states.push(loadOf("driver alone", driven, weights, pack));
  states.push(loadOf("fully laden", laden, weights, pack));
  if (ball) states.push(loadOf("fully laden, towing", put(laden, weights, ball.mass_kg, ball.place_mm), weights, pack));
  return states;
}

/** The car with all that comes out and goes in, without its pack. */
export function converted(weights: Weights): AxleLoads {
  const without = weights.out.reduce(
    (at, { mass_kg, place_mm }) => put(at, weights, -mass_kg, place_mm),
    weighedAxles(weights),
  );
  return weights.in.reduce((at, { mass_kg, place_mm }) => put(at, weights, mass_kg, place_mm), without);
}

/** What is too much for a plate or a tyre. All of them bind. */
export function overloads({ front_kg, rear_kg }: AxleLoads, { plates }: Weights): Over[] {
  const checks: readonly (readonly [Over["what"], number, number | undefined])[] = [
    ["front axle", front_kg, plates.front_kg],
    ["rear axle", rear_kg, plates.rear_kg],
    ["gross", front_kg + rear_kg, plates.gross_kg],
    ["front tyres", front_kg, plates.frontTyres_kg],
    ["rear tyres", rear_kg, plates.rearTyres_kg],
  ];
  return checks.flatMap(([what, load_kg, most_kg]) =>
    most_kg !== undefined && load_kg > most_kg ? [{ what, by_kg: load_kg - most_kg }] : [],
  );
}

function loadOf(name: Load["name"], loads: AxleLoads, weights: Weights, pack?: string): Load {
  const total_kg = loads.front_kg + loads.rear_kg;
  return {
    name,
    ...(pack !== undefined && { pack }),
    ...loads,
    total_kg,
    frontShare_frac: loads.front_kg / total_kg,
    gravityPlace_mm: gravityPlace_m(loads, weights.wheelbase_mm / MM_PER_M) * MM_PER_M,
    over: overloads(loads, weights),
  };
}

export function put(loads: AxleLoads, { wheelbase_mm }: Weights, mass_kg: number, place_mm: number): AxleLoads {
  return withMass(loads, { mass_kg, place_m: place_mm / MM_PER_M }, wheelbase_mm / MM_PER_M);
}
