import { visibleJson } from "./visible.ts";

/**
 * JSON on one line, with control characters escaped. Numbers carry twelve significant digits: a conversion's rounding (131.3 km/h to m/s and back) then
 * does not show, and nothing real is lost. A number that is none is a fault of ours: JSON would quietly make it null.
 */
export function jsonText(value: unknown): string {
  const json = JSON.stringify(value, (key, inner: unknown) => {
    if (typeof inner !== "number") return inner;
    if (!Number.isFinite(inner)) throw new Error(`${key} came out as ${inner}`);
    return Number(inner.toPrecision(12));
  });
  return visibleJson(json);
}
