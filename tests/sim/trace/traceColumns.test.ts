import { expect, it } from "vitest";
import { isTraceCsv } from "../../../sim/trace/traceColumns.ts";

it.each([
  "time_s,speed_kmh",
  "speed_mph,time_s",
  '\uFEFF"time_s","speed_mps","elevation_m"\r\n0,0,0',
  "elevation_m , time_s , speed_kmh\nthe rows are not looked at",
])("takes %j for a trace", (text) => {
  expect(isTraceCsv(text)).toBe(true);
});

it.each([
  "",
  "time_s",
  "time_s,elevation_m",
  "time_s,speed_kmh,gear",
  "time_s,speed_kmh,speed_mph",
  "time_s,speed_kmh,elevation_m,elevation_m",
  "time_s,time_s,speed_kmh",
  "time_s;speed_kmh",
  "Time_s,Speed_kmh",
  "time_s,toString",
  "\uFFFD\uFFFD,time_s",
])("does not take %j for one", (text) => {
  expect(isTraceCsv(text)).toBe(false);
});
