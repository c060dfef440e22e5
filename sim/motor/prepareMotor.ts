import type { Controller } from "../../shared/job/schema/controller.ts";
import type { Motor, MotorLoss } from "../../shared/job/schema/motor.ts";
import { MPS_PER_KMH, RADPS_PER_RPM, W_PER_KW } from "../../shared/units.ts";
import { prepareHeat } from "../math/heatLump.ts";
import { rectangularTable } from "../math/rectangularTable.ts";
import { type Envelope, peakEnvelope, pointEnvelope } from "./envelope.ts";
import type { Loss } from "./loss.ts";
import { lossFromEfficiency } from "./lossFromEfficiency.ts";
import type { ControllerModel, MotorModel } from "./motorModel.ts";

const NO_LIMIT = Number.POSITIVE_INFINITY;

/**
 * A job's motor in SI. With one factor on the mass, the rotor is in that factor and has no inertia of its own. The same losses as of
 * another motor are that one's table.
 */
export function prepareMotor(
  motor: Motor,
  countsRotor: boolean,
  like?: { readonly motor: Motor; readonly model: MotorModel },
): MotorModel {
  return {
    envelope: prepareEnvelope(motor),
    loss: like?.motor.loss === motor.loss ? like.model.loss : prepareLoss(motor.loss),
    rotorInertia_kgm2: countsRotor ? motor.rotorInertia_kgm2 : 0,
    max_radps: motor.maxSpeed_rpm * RADPS_PER_RPM,
    rollBack_radps: motor.rollBack_rpm * RADPS_PER_RPM,
    heat: prepareHeat(motor.heat, 1),
  };
}

/** A job's controller in SI; what it does not limit is infinite. A motor that cannot regenerate has no regen torque. */
export function prepareController(controller: Controller, motor: Motor): ControllerModel {
  const { regen } = controller;
  const brakes = regen.isOn && motor.canRegenerate;
  return {
    torque_Nm: controller.torqueCap_Nm ?? NO_LIMIT,
    power_W: (controller.power_kW ?? NO_LIMIT) * W_PER_KW,
    current_A: controller.current_A ?? NO_LIMIT,
    min_V: controller.min_V,
    max_V: controller.max_V,
    rollBackBelow_V: controller.rollBackBelow_V ?? controller.min_V,
    rollBackAbove_V: controller.rollBackAbove_V ?? controller.max_V,
    regen_Nm: brakes ? (regen.torque_Nm ?? NO_LIMIT) : 0,
    regen_W: (regen.power_kW ?? NO_LIMIT) * W_PER_KW,
    regen_A: regen.current_A ?? NO_LIMIT,
    fadeNone_mps: regen.fadeNone_kmh * MPS_PER_KMH,
    fadeFull_mps: regen.fadeFull_kmh * MPS_PER_KMH,
  };
}

function prepareEnvelope(motor: Motor): Envelope {
  const { envelope, reference_V } = motor;
  if (envelope.kind === "peak") return peakEnvelope(reference_V, envelope.torque_Nm, envelope.power_kW * W_PER_KW);
  return pointEnvelope(
    reference_V,
    envelope.speed_rpm.map((speed_rpm) => speed_rpm * RADPS_PER_RPM),
    envelope.torque_Nm,
  );
}

function prepareLoss(loss: MotorLoss): Loss {
  switch (loss.kind) {
    case "fourTerm":
      return { form: "fourTerm", law: loss };
    case "flat":
      return { form: "flat", efficiency_frac: loss.efficiency_frac };
    case "lossTable": {
      const speed_radps = loss.speed_rpm.map((speed_rpm) => speed_rpm * RADPS_PER_RPM);
      const table = rectangularTable(speed_radps, loss.torque_Nm, loss.loss_W);
      return { form: "table", table, isMirrored: loss.torque_Nm[0] >= 0 };
    }
    case "efficiencyMap": {
      const speed_radps = loss.speed_rpm.map((speed_rpm) => speed_rpm * RADPS_PER_RPM);
      const map = lossFromEfficiency(speed_radps, loss.torque_Nm, loss.efficiency_frac);
      return { form: "table", table: rectangularTable(map.speed_radps, map.torque_Nm, map.loss_W), isMirrored: true };
    }
  }
}
