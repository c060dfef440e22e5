import type { Job } from "../../../shared/job/job.ts";
import type { Supply } from "../../../shared/job/schema/supply.ts";

/**
 * A household socket as it is used for hours on end, where a job names no supply. 10 A where 13 or 16 A are fused, as long hours heat old
 * sockets (common practice, no source); 12 A on a circuit of 15 A, four fifths of it  [NEC2017, 625.41].
 */
export function usualSocket(units: Job["units"]): Supply {
  const socket = { kind: "household", mode: "mode2" } as const;
  return units === "american"
    ? { ...socket, name: "Household socket, 120 V, 12 A", voltage_V: 120, current_A: 12 }
    : { ...socket, name: "Household socket, 10 A", voltage_V: 230, current_A: 10 };
}
