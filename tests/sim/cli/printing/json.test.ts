import { expect, it } from "vitest";
import { jsonText } from "../../../../sim/cli/printing/json.ts";

it("writes twelve significant digits, in lists and objects alike", () => {
  expect(jsonText({ max_kmh: (131.3 / 3.6) * 3.6 + 1e-13, list: [1 / 3, 1e-20, -0.1 - 0.2] })).toBe(
    '{"max_kmh":131.3,"list":[0.333333333333,1e-20,-0.3]}',
  );
});

it("leaves words, whole numbers, true and nothing as they are", () => {
  expect(jsonText({ a: "0.30000000000000004", b: 123456789, c: true, d: null })).toBe(
    '{"a":"0.30000000000000004","b":123456789,"c":true,"d":null}',
  );
});

it("refuses a number that is none instead of making it nothing", () => {
  expect(() => jsonText({ range_km: Number.NaN })).toThrow("range_km came out as NaN");
  expect(() => jsonText([Number.POSITIVE_INFINITY])).toThrow("Infinity");
});
