/**
 * JSON on one line. Numbers carry twelve significant digits: a conversion's rounding (131.3 km/h to m/s and back) then
 * does not show, and nothing real is lost.
 */
export function jsonText(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    typeof inner === "number" && Number.isFinite(inner) ? Number(inner.toPrecision(12)) : inner,
  );
}
