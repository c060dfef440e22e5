import { terminalCurrent_A } from "../battery/terminalCurrent.ts";
import { motorLoss_W } from "../motor/loss.ts";
import type { RunContext } from "./runContext.ts";

/**
 * Works out what a torque at the motor shaft asks of controller and pack, and writes it into the interval:
 * losses, power at the controller's DC side, power, current and voltage at the pack's terminals.
 * Loss is added to shaft power either way; at rest nothing turns and nothing is lost.
 */
export function solveElectrical(context: RunContext, motor_Nm: number): void {
  const { motor_radps } = context.interval;
  const { loss } = context.model.motor;
  solveWithLoss(context, motor_Nm, motor_radps > 0 ? motorLoss_W(loss, motor_Nm, motor_radps) : 0);
}

/** The same for a torque whose loss is known: with neither, the controller is off and only the accessories draw. */
export function solveWithLoss({ interval, start }: RunContext, motor_Nm: number, loss_W: number): void {
  const { pack } = start;
  const controller_W = motor_Nm * interval.motor_radps + loss_W;
  const terminal_W = controller_W + start.accessories_W;
  const resistance_ohm = terminal_W >= 0 ? pack.discharge_ohm : pack.charge_ohm;
  const current_A = terminalCurrent_A(terminal_W, pack.openCircuit_V, resistance_ohm);

  interval.motor_Nm = motor_Nm;
  interval.loss_W = loss_W;
  interval.controller_W = controller_W;
  interval.terminal_W = terminal_W;
  interval.current_A = current_A;
  interval.resistance_ohm = resistance_ohm;
  interval.terminal_V = pack.openCircuit_V - resistance_ohm * current_A;
}
