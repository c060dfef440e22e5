import type { Job } from "../../../shared/job/job.ts";
import { type Message, type MessageQuantity, message, quantity as q, whole } from "../../../shared/quantity/message.ts";
import type { Candidate } from "../driveReport.ts";
import { type OverPlate, overPlate } from "../weight/overPlate.ts";

/** A danger for which a pack may not be used: the limit, what it would be, and two ways out. No range stands beside it. */
export interface Stop {
  readonly kind: "packAboveController" | "packBelowController" | "aboveGross" | "abovePlate";
  readonly limit: MessageQuantity;
  readonly value: MessageQuantity;
  readonly sentence: Message;
  /** Each a thing to do, with the place in the job where it is done. */
  readonly ways: readonly [Way, Way];
}

export interface Way {
  readonly words: Message;
  readonly path: string;
}

/** What of a job decides whether a pack may be used. */
export type Limits = Pick<Job, "controller" | "vehicle" | "packs" | "weights">;

/** Why a pack may not be used with this controller and in this car, or nothing. */
export function stopOf(job: Limits, packIndex: number, { pack, testMass_kg }: Candidate): Stop | undefined {
  const { controller, vehicle, packs } = job;
  if (pack.max_V > controller.max_V) return aboveController(job, packIndex, pack);
  if (pack.max_V < controller.min_V) return belowController(job, packIndex, pack);
  if (vehicle.gross_kg !== undefined && testMass_kg > vehicle.gross_kg)
    return aboveGross(packIndex, testMass_kg, vehicle.gross_kg);
  const over = job.weights && overPlate(job.weights, packs[packIndex]?.name ?? "", pack.mass_kg);
  return job.weights && over?.isAlways ? abovePlate(job.weights, packIndex, over) : undefined;
}

function aboveController({ controller }: Limits, packIndex: number, pack: Candidate["pack"]): Stop {
  const limit = q("voltage", controller.max_V);
  const value = q("voltage", pack.max_V);
  const fewer = Math.floor((controller.max_V / pack.max_V) * pack.seriesModules);
  return {
    kind: "packAboveController",
    limit,
    value,
    sentence: message`Full, this pack has ${value}. The controller takes ${limit} at most and would be destroyed.`,
    ways: [
      {
        words: fewer >= 1 ? message`Use ${fewer} in series` : message`Use modules of a lower voltage`,
        path: `packs.${packIndex}.seriesModules`,
      },
      { words: message`Change the controller`, path: "controller.max_V" },
    ],
  };
}

function belowController({ controller }: Limits, packIndex: number, pack: Candidate["pack"]): Stop {
  const limit = q("voltage", controller.min_V);
  const value = q("voltage", pack.max_V);
  const more = Math.ceil((controller.min_V / pack.min_V) * pack.seriesModules);
  return {
    kind: "packBelowController",
    limit,
    value,
    sentence: message`Even full, this pack has ${value}. The controller needs ${limit} at least: the car does not move.`,
    ways: [
      { words: message`Use ${more} in series`, path: `packs.${packIndex}.seriesModules` },
      { words: message`Change the controller`, path: "controller.min_V" },
    ],
  };
}

function aboveGross(packIndex: number, testMass_kg: number, gross_kg: number): Stop {
  const limit = whole("mass", gross_kg, "down");
  const value = whole("mass", testMass_kg, "up");
  const over = whole("mass", testMass_kg - gross_kg, "up");
  return {
    kind: "aboveGross",
    limit,
    value,
    sentence: message`As driven the car weighs ${value} with this pack. Its plate allows ${limit}, ${over} less.`,
    ways: [
      { words: message`Use fewer modules`, path: `packs.${packIndex}.parallelModules` },
      { words: message`Carry ${over} less`, path: "vehicle.load_kg" },
    ],
  };
}

/** An axle, its tyres or the whole car above what they may carry already with its driver alone: it could never be driven. */
function abovePlate({ plates }: NonNullable<Job["weights"]>, packIndex: number, { load, otherSplit }: OverPlate): Stop {
  const { what, by_kg } = load.over.reduce((most, each) => (each.by_kg > most.by_kg ? each : most));
  const most_kg = {
    "front axle": plates.front_kg,
    "rear axle": plates.rear_kg,
    gross: plates.gross_kg,
    "front tyres": plates.frontTyres_kg,
    "rear tyres": plates.rearTyres_kg,
  }[what];
  const limit = whole("mass", most_kg ?? 0, "down");
  const value = whole("mass", (most_kg ?? 0) + by_kg, "up");
  const rests = what === "gross" ? message`the car weighs ${value}` : message`${value} rest on the ${what}`;
  return {
    kind: "abovePlate",
    limit,
    value,
    sentence: message`${load.name === "empty" ? "Empty" : "With its driver alone"}, ${rests} with this pack. No more than ${limit} may: so it may not be driven on the road; local codes decide.`,
    ways: [
      { words: message`Use fewer modules`, path: `packs.${packIndex}.parallelModules` },
      otherSplit
        ? { words: message`Split the pack otherwise between its boxes`, path: "weights.boxes.0.share_frac" }
        : { words: message`Place its boxes elsewhere`, path: "weights.boxes.0.place_mm" },
    ],
  };
}
