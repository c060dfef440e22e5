import type { Job } from "../../../shared/job/job.ts";
import { type Message, message, quantity as q } from "../../../shared/quantity/message.ts";
import { J_PER_WH, M_PER_KM } from "../../../shared/units.ts";
import { prepare } from "../../step/prepare.ts";
import { run } from "../../step/run.ts";
import type { Trace } from "../../trace/trace.ts";

type TransferBox = NonNullable<Job["driveline"]["transferBox"]>;

/** How levers and hubs of a part-time four-wheel drive may stand, and what the road then takes. */
export interface DriveState {
  readonly name: "hubs free" | "hubs locked" | "front axle engaged";
  readonly isAsSet: boolean;
  /** The axle that drives, and brakes by the motor. */
  readonly drivenAxle: "front" | "rear" | "both";
  /** Drag of front shafts that turn, at the front wheels. */
  readonly shaftDrag_Nm: number;
  /** Absent where the car does not move. */
  readonly battery_Whpkm?: number;
  readonly regen_Wh: number;
}

const states: readonly (readonly [DriveState["name"], Pick<TransferBox, "isFrontEngaged" | "hubs">])[] = [
  ["hubs free", { isFrontEngaged: false, hubs: "free" }],
  ["hubs locked", { isFrontEngaged: false, hubs: "locked" }],
  ["front axle engaged", { isFrontEngaged: true, hubs: "locked" }],
];

/**
 * The road driven with the hubs free, locked, and with the front axle engaged; nothing for a car without a part-time transfer box.
 * A car without freewheeling hubs has no first row.
 */
export function fourWheelDrive(job: Job, packIndex: number, trace: Trace): DriveState[] {
  const { transferBox } = job.driveline;
  if (transferBox === undefined) return [];
  return states.flatMap(([name, levers]): DriveState[] => {
    const isHubless = transferBox.hubs === "none";
    if (isHubless && name === "hubs free") return [];
    const box: TransferBox = { ...transferBox, ...levers, hubs: isHubless ? "none" : levers.hubs };
    const model = prepare({ ...job, driveline: { ...job.driveline, transferBox: box } }, job.packs[packIndex]);
    const { totals } = run(model, trace);
    const turns = box.isFrontEngaged || box.hubs !== "free";
    return [
      {
        name,
        isAsSet: box.isFrontEngaged === transferBox.isFrontEngaged && box.hubs === transferBox.hubs,
        drivenAxle: box.isFrontEngaged && box.hubs !== "free" ? "both" : job.driveline.drivenAxle,
        shaftDrag_Nm: turns ? box.frontShaftDrag_Nm : 0,
        regen_Wh: totals.regen_J / J_PER_WH,
        ...(totals.distance_m > 0 && { battery_Whpkm: totals.terminal_J / J_PER_WH / (totals.distance_m / M_PER_KM) }),
      },
    ];
  });
}

/** What free hubs save, in a sentence; nothing without them. */
export function hubWords(rows: readonly DriveState[]): Message | undefined {
  const of = (name: DriveState["name"]) => rows.find((row) => row.name === name)?.battery_Whpkm;
  const [free, locked] = [of("hubs free"), of("hubs locked")];
  if (free === undefined || locked === undefined) return undefined;
  const drag = rows.find(({ name }) => name === "hubs locked")?.shaftDrag_Nm ?? 0;
  if (drag === 0)
    return message`What the turning front shafts drag is not known, so free hubs save nothing here: turn a wheel with a spring balance. Two to five per cent is usual (common practice, no source).`;
  return message`With the hubs free the car takes ${q("energyUse", locked - free, 2)} (${q("fraction", 1 - free / locked, 2)}) less on this road than with them locked; then only the rear axle brakes by the motor. With both axles locked together never on a dry road: the driveline winds up.`;
}
