import { truncateSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { describe, expect, it } from "vitest";
import { writeCsv, writeGpx, writeNmea } from "../../../logs/logWriter.ts";
import { runCommand } from "../../../support/runCommand.ts";
import { bare, bareAt, beginning, beginning_km, type Found, found, logFiles, refused } from "../commands/loggedWeek.ts";

describe("a file that is no sound log", () => {
  it.each<[string, string | Uint8Array, string]>([
    ["empty", "", "found nothing in it; a speed trace or a log"],
    ["blank", " \r\n\n", "found nothing in it"],
    ["a photograph", Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16, 74, 70, 73, 70), "found a photograph"],
    ["a letter", "Dear client,\nthank you for the log.\n", "found text without a table of numbers"],
    ["a single point", bare(bareAt(50, 8, 0)), "found 1 fix with a time"],
    ["a single point without a time", bare(bareAt(50, 8)), "found a single point"],
    [
      "at 0,0 throughout",
      bare(Array.from({ length: 99 }, (_, i) => bareAt(0, 0, i)).join("")),
      "every position at 0,0",
    ],
    [
      "XML that expands",
      `<!DOCTYPE gpx [<!ENTITY a "aa"><!ENTITY b "&a;&a;">]>${bare(bareAt(50, 8, 0))}`,
      "declares entities",
    ],
  ])("%s is refused", async (_, content, message) => {
    const [path] = logFiles({ "log.gpx": content });
    expect(await refused(path)).toMatch(/^log\.gpx: /);
    expect(await refused(path)).toContain(message);
  });

  it("with parts elsewhere is refused, and nothing is fetched", async () => {
    const asked: (string | undefined)[] = [];
    const server = createServer((request, response) => {
      asked.push(request.url);
      response.end();
    });
    await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
    const url = `http://127.0.0.1:${(server.address() as AddressInfo).port}/x`;
    const body = bare(bareAt(50, 8, 0) + bareAt(50.01, 8, 60));
    const paths = logFiles({
      "a.gpx": `<!DOCTYPE gpx SYSTEM "${url}">${body}`,
      "b.gpx": `<!DOCTYPE gpx [<!ENTITY x SYSTEM "${url}">]>${body}`,
      "c.gpx": `<!DOCTYPE gpx [<!ENTITY % x SYSTEM "${url}"> %x;]>${body}`,
    });
    for (const path of paths) expect(await refused(path)).toContain("it is refused");
    await new Promise((resolve) => server.close(resolve));
    expect(asked).toEqual([]);
  });

  it("beyond the limit is refused before it is read, with the limit", async () => {
    const [path] = logFiles({ "big.gpx": "" });
    truncateSync(path, 200_000_001); // holes on the disk, not bytes
    expect(await refused(path)).toContain("at most 200 MB can be read");
  });

  it.each([
    ["gpx", writeGpx(beginning)],
    ["nmea", writeNmea(beginning)],
    ["csv", writeCsv(beginning)],
  ] as const)("cut in half, a %s is read as far as it goes, which is said", async (format, bytes) => {
    // Wherever the cut falls: at each of the bytes of some row.
    const half = Math.floor(bytes.length / 2);
    for (const cut of [half, half + 17, half + 31]) {
      const [path] = logFiles({ "half.log": bytes.slice(0, cut) });
      const { code, out, err } = await runCommand("trace", path, "--json");
      expect(code).toBe(0);
      expect(err).toMatch(/end of the file/);
      const { files, total } = JSON.parse(out) as Found;
      expect(files[0].format).toBe(format);
      expect(files[0].fixes / beginning.length).toBeCloseTo(0.5, 1);
      expect(total.distance_km).toBeGreaterThan(0.3 * beginning_km);
      expect(total.distance_km).toBeLessThan(0.7 * beginning_km);
    }
  });

  it("that ends without a line end is not called cut", async () => {
    const whole = new TextDecoder().decode(writeCsv(beginning)).trimEnd();
    const [path] = logFiles({ "a.csv": whole });
    expect((await runCommand("trace", path)).err).toBe("");
    expect((await found(path)).files[0]).toMatchObject({ fixes: beginning.length, badLines: 0 });
  });

  it("in Latin-1 or UTF-16 is read like one in UTF-8", async () => {
    const text = new TextDecoder().decode(writeCsv(beginning)).replace("altitude", "Höhe");
    const paths = logFiles({
      "utf8.csv": text,
      "latin1.csv": Buffer.from(text, "latin1"),
      "utf16.csv": Buffer.concat([Buffer.of(0xff, 0xfe), Buffer.from(text, "utf16le")]),
    });
    const [utf8, ...others] = await Promise.all(paths.map((path) => found(path)));
    expect(others.map(({ files }) => files[0].readAs.encoding)).toEqual(["windows-1252", "utf-16le"]);
    for (const other of others) expect(other.trips).toEqual(utf8.trips);
    expect(utf8.total.climb_m).toBeGreaterThan(0);
    const [strict] = logFiles({ "s.csv": Buffer.from("\uFEFFtime_s,speed_kmh\n0,0\n5,30\n10,0\n", "utf16le") });
    expect((await found(strict)).files[0].format).toBe("trace");
  });
});
