import type { LimitedHeat } from "../math/heatLump.ts";
import type { Envelope } from "./envelope.ts";
import type { Loss } from "./loss.ts";

/** A motor in SI, ready for look-up. Never changes during a run. */
export interface MotorModel {
  readonly envelope: Envelope;
  readonly loss: Loss;
  readonly rotorInertia_kgm2: number;
  readonly max_radps: number;
  readonly rollBack_radps: number;
  readonly heat: LimitedHeat;
}

/** A controller in SI; what it does not limit is infinite. */
export interface ControllerModel {
  readonly torque_Nm: number;
  readonly power_W: number;
  readonly current_A: number;
  readonly min_V: number;
  readonly max_V: number;
  readonly rollBackBelow_V: number;
  readonly rollBackAbove_V: number;
  readonly regen_Nm: number;
  readonly regen_W: number;
  readonly regen_A: number;
  readonly fadeNone_mps: number;
  readonly fadeFull_mps: number;
}
