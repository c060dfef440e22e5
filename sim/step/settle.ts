import { terminalCurrent_A } from "../battery/terminalCurrent.ts";
import { motorLoss_W } from "../motor/loss.ts";
import type { Model } from "./model.ts";
import type { Interval } from "./state.ts";

/**
 * Works out what a torque at the motor shaft asks of controller and pack, and writes it into the interval:
 * losses, power at the controller's DC side, power, current and voltage at the pack's terminals.
 * Loss is added to shaft power either way; at rest nothing turns and nothing is lost.
 */
export function settle(model: Model, interval: Interval, motor_Nm: number): void {
  const { motor_radps } = interval;
  draw(interval, motor_Nm, motor_radps > 0 ? motorLoss_W(model.motor.loss, motor_Nm, motor_radps) : 0);
}

/** The same for a torque whose loss is known: with neither, the controller is off and only the accessories draw. */
export function draw(interval: Interval, motor_Nm: number, loss_W: number): void {
  const controller_W = motor_Nm * interval.motor_radps + loss_W;
  const terminal_W = controller_W + interval.accessories_W;
  const resistance_ohm = terminal_W >= 0 ? interval.discharge_ohm : interval.charge_ohm;
  const current_A = terminalCurrent_A(terminal_W, interval.openCircuit_V, resistance_ohm);

  interval.motor_Nm = motor_Nm;
  interval.loss_W = loss_W;
  interval.controller_W = controller_W;
  interval.terminal_W = terminal_W;
  interval.current_A = current_A;
  interval.terminal_V = interval.openCircuit_V - resistance_ohm * current_A;
}
