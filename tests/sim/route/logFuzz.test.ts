import fc from "fast-check";
import { expect, it } from "vitest";
import { damaged, damages, digest, soundLogs } from "../../logs/logFuzz.ts";

const outcomes = ["cleaned", "refused"];

// Many more of the same: npx tsx tests/bench/routeFuzz.ts
it.each(Object.entries(soundLogs))("a %s log, whole, is read and cleaned", (_, bytes) => {
  expect(digest(bytes)).toBe("cleaned");
});

it.each(Object.entries(soundLogs))("a damaged %s log is read or refused, never more", (_, bytes) => {
  let cleaned = 0;
  fc.assert(
    fc.property(damages, (list) => {
      cleaned += digest(damaged(bytes, list)) === "cleaned" ? 1 : 0;
    }),
    { numRuns: 60, seed: 7 },
  );
  expect(cleaned).toBeGreaterThan(20);
});

it("any bytes at all are read or refused", () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
      expect(outcomes).toContain(digest(bytes));
    }),
    { numRuns: 300, seed: 7 },
  );
});

it("any text at all is read or refused", () => {
  const encoder = new TextEncoder();
  const words = fc.constantFrom(
    "<",
    "trkpt",
    ">",
    ",",
    ";",
    "\n",
    "1",
    "2.5",
    "time",
    "speed",
    "$GPRMC,",
    "lat",
    " ",
    '"',
    "2024-05-03",
    ":",
  );
  fc.assert(
    fc.property(fc.array(words, { maxLength: 120 }), (list) => {
      expect(outcomes).toContain(digest(encoder.encode(list.join(""))));
    }),
    { numRuns: 300, seed: 7 },
  );
});
