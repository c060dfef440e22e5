import { M_PER_KM } from "../../../shared/units.ts";
import type { Model } from "../../step/model.ts";
import { characteristics } from "../../trace/characteristics.ts";
import type { Trace } from "../../trace/trace.ts";
import { rangeOn } from "./range.ts";

/** How far a car goes on one charge, in km; 0 for one that comes to a stand before it has driven its road once. */
export function rangeFrom_km(model: Model, trace: Trace): number {
  const range = rangeOn(model, trace);
  const isStuck = range.end === "stuck" && range.distance_m < characteristics(trace).distance_m;
  return isStuck ? 0 : range.distance_m / M_PER_KM;
}
