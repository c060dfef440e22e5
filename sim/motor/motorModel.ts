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

/** The same motor with other parts, in the same shape. */
export function motorWith(motor: MotorModel, parts: Partial<MotorModel>): MotorModel {
  return {
    envelope: parts.envelope ?? motor.envelope,
    loss: parts.loss ?? motor.loss,
    rotorInertia_kgm2: parts.rotorInertia_kgm2 ?? motor.rotorInertia_kgm2,
    max_radps: parts.max_radps ?? motor.max_radps,
    rollBack_radps: parts.rollBack_radps ?? motor.rollBack_radps,
    heat: parts.heat ?? motor.heat,
  };
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

/** The same controller with other limits, in the same shape. */
export function controllerWith(controller: ControllerModel, parts: Partial<ControllerModel>): ControllerModel {
  return {
    torque_Nm: parts.torque_Nm ?? controller.torque_Nm,
    power_W: parts.power_W ?? controller.power_W,
    current_A: parts.current_A ?? controller.current_A,
    min_V: parts.min_V ?? controller.min_V,
    max_V: parts.max_V ?? controller.max_V,
    rollBackBelow_V: parts.rollBackBelow_V ?? controller.rollBackBelow_V,
    rollBackAbove_V: parts.rollBackAbove_V ?? controller.rollBackAbove_V,
    regen_Nm: parts.regen_Nm ?? controller.regen_Nm,
    regen_W: parts.regen_W ?? controller.regen_W,
    regen_A: parts.regen_A ?? controller.regen_A,
    fadeNone_mps: parts.fadeNone_mps ?? controller.fadeNone_mps,
    fadeFull_mps: parts.fadeFull_mps ?? controller.fadeFull_mps,
  };
}
