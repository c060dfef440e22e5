import { describe, expect, it } from "vitest";
import { cutAtEnd } from "../../../../sim/route/log/cutAtEnd.ts";

const encoder = new TextEncoder();
const rows = Array.from({ length: 30 }, (_, i) => `${i},52.1${String(i).padStart(3, "0")},8.4000`);
const soundText = (text: string) => {
  const { isCut, sound } = cutAtEnd(encoder.encode(text), "utf-8", "table");
  return { isCut, text: new TextDecoder().decode(sound) };
};

describe("the end of a table", () => {
  const whole = `t,lat,lon\n${rows.join("\n")}`;
  it.each([whole, `${whole}\n`, `${whole}\r\n`])("is sound where its last row is like the others", (text) => {
    expect(soundText(text)).toEqual({ isCut: false, text });
  });

  it.each([1, 2, 3, 4, 7, 9, 14])("is cut where %i bytes are missing, and the row is left out", (missing) => {
    const kept = `t,lat,lon\n${rows.slice(0, -1).join("\n")}\n`;
    expect(soundText(whole.slice(0, -missing))).toEqual({ isCut: true, text: kept });
  });

  it("is not called cut for a number that just needs fewer digits", () => {
    const text = `t,speed\n${rows.map((_, i) => `${i},${i / 2}`).join("\n")}`.replace(/14\.5$/, "14");
    expect(soundText(text)).toEqual({ isCut: false, text });
  });

  it.each(["utf-16le", "utf-16be"] as const)("is found in %s, whole characters only", (encoding) => {
    const bytes = Buffer.from(whole.slice(0, -2), "utf16le");
    if (encoding === "utf-16be") bytes.swap16();
    const odd = bytes.subarray(0, -1); // half a character at the end
    const { isCut, sound } = cutAtEnd(odd, encoding, "table");
    const kept = Buffer.from(sound);
    if (encoding === "utf-16be") kept.swap16();
    expect(isCut).toBe(true);
    expect(kept.toString("utf16le")).toBe(`t,lat,lon\n${rows.slice(0, -1).join("\n")}\n`);
  });
});

describe("the end of an NMEA log", () => {
  const log = "$GNRMC,1*0A\r\n$GNRMC,2*0B\r\n$GNRMC,3*0C";
  const isCut = (text: string) => cutAtEnd(encoder.encode(text), "utf-8", "nmea").isCut;
  it("is cut where the last sentence lacks its checksum, or part of it", () => {
    expect([log, `${log}\r\n`].map(isCut)).toEqual([false, false]);
    expect([1, 2, 3, 8].map((missing) => isCut(log.slice(0, -missing)))).toEqual([true, true, true, true]);
  });
});
