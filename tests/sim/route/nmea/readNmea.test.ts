import { describe, expect, it } from "vitest";
import { readLog } from "../../../../sim/route/readLog.ts";

const encoder = new TextEncoder();
const read = (text: string, options = {}) => readLog("a.nmea", encoder.encode(text), options);
/** A sentence with its checksum: exclusive-or of all characters between $ and *. */
const sentence = (body: string) => {
  const sum = [...body].reduce((total, letter) => total ^ letter.charCodeAt(0), 0);
  return `$${body}*${sum.toString(16).toUpperCase().padStart(2, "0")}`;
};
const rmc = (clock: string, date = "030524", status = "A") =>
  sentence(`GNRMC,${clock},${status},5206.000,N,00830.000,E,10.0,0.0,${date},,`);

describe("an NMEA 0183 log", () => {
  it("gives what the classic pair of sentences says", () => {
    // Both checksums recomputed: exclusive-or of the characters between $ and *. [NMEA0183, sample sentences]
    const text =
      "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\r\n$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n";
    const { fixes, badLines, format } = read(text);
    expect(format).toBe("nmea");
    expect(badLines).toBe(0);
    expect(fixes.count).toBe(1);
    expect(fixes.time_s[0]).toBe(Date.UTC(1994, 2, 23, 12, 35, 19) / 1000);
    expect(fixes.latitude_deg[0]).toBeCloseTo(48.1173, 9);
    expect(fixes.longitude_deg[0]).toBeCloseTo(11.516666666, 8);
    expect(fixes.speed_mps[0]).toBeCloseTo((22.4 * 1852) / 3600, 9);
    expect(fixes.elevation_m[0]).toBe(545.4);
  });

  it("counts and leaves out sentences whose checksum fails", () => {
    const log = read(`${rmc("081205")}\n${rmc("081206").replace("5206.000", "5207.000")}\n${rmc("081207")}\n`);
    expect(log.fixes.count).toBe(2);
    expect(log.badLines).toBe(1);
    expect(log.problems[0]).toMatchObject({ code: "badChecksum", where: "a.nmea line 2" });
  });

  it("reads sentences without a checksum, and notes them", () => {
    const log = read(`${rmc("081205").slice(0, -3)}\n`);
    expect(log.fixes.count).toBe(1);
    expect(log.problems.map(({ code }) => code)).toContain("noChecksum");
  });

  it("says one of a kind in the singular, and counts as read unchecked only what was read", () => {
    const broken = rmc("081207", "030524", "Z").slice(0, -3);
    const log = read(`${rmc("081205", "030524", "V")}\n${rmc("081206").slice(0, -3)}\n${broken}\n`);
    const messages = log.problems.map(({ message }) => message);
    expect(messages).toContain("found 1 moment without a lock, left out");
    expect(messages).toContain("found 1 sentence without a checksum, read unchecked");
    expect(messages).toContain("found a RMC sentence with fields out of form");
    expect(read(rmc("081206")).guess.layout[0]).toBe("NMEA 0183, 1 sentence");
    expect(read(`${rmc("081206")}\n${rmc("081207")}`).guess.layout[0]).toBe("NMEA 0183, 2 sentences");
  });

  it("leaves out void fixes before the lock", () => {
    const log = read(`${rmc("081205", "030524", "V")}\n${rmc("081206")}\n`);
    expect(log.fixes.count).toBe(1);
    expect(log.problems.map(({ code }) => code)).toContain("voidFixes");
  });

  it("finds sentences inside other lines and without line breaks between them", () => {
    const log = read(`12:00:01 RX ${rmc("081205")}${rmc("081206")} ok\n[x] ${rmc("081207")}\n`);
    expect(log.fixes.count).toBe(3);
  });

  it("carries GGA past midnight on RMC's date, and turns the date over by itself without RMC", () => {
    const gga = (clock: string) => sentence(`GPGGA,${clock},5206.000,N,00830.000,E,1,08,0.9,100.0,M,46.9,M,,`);
    const { fixes } = read(`${rmc("235958", "030524")}\n${gga("235959")}\n${gga("000001")}\n`);
    expect([...fixes.time_s].map((time_s) => time_s - fixes.time_s[0])).toEqual([0, 1, 3]);
  });

  it("dates fixes before the first dated sentence", () => {
    const gga = sentence("GPGGA,081204,5206.000,N,00830.000,E,1,08,0.9,100.0,M,46.9,M,,");
    const { fixes } = read(`${gga}\n${rmc("081205")}\n`);
    expect(fixes.time_s[1] - fixes.time_s[0]).toBe(1);
    expect(fixes.time_s[0]).toBe(Date.UTC(2024, 4, 3, 8, 12, 4) / 1000);
  });

  it("asks for a date where only clocks are in the file, and takes the one given", () => {
    const gga = sentence("GPGGA,081204,5206.000,N,00830.000,E,1,08,0.9,100.0,M,46.9,M,,");
    expect(read(gga).questions).toContainEqual(
      expect.objectContaining({ name: "date", option: "--date", decided: false }),
    );
    const dated = read(gga, { date: "2024-05-03" });
    expect(dated.questions[0]).toMatchObject({ decided: true });
    expect(dated.fixes.time_s[0]).toBe(Date.UTC(2024, 4, 3, 8, 12, 4) / 1000);
  });

  it("takes speed from VTG, position from GNS, date from ZDA, for any talker", () => {
    const text = [
      sentence("GLZDA,081205.00,03,05,2024,00,00"),
      sentence("GAGNS,081205.00,5206.000,N,00830.000,W,AAN,10,0.8,120.5,46.9,,"),
      sentence("BDVTG,0.0,T,,M,10.0,N,18.52,K,A"),
    ].join("\n");
    const { fixes } = read(text);
    expect(fixes.count).toBe(1);
    expect(fixes.time_s[0]).toBe(Date.UTC(2024, 4, 3, 8, 12, 5) / 1000);
    expect(fixes.longitude_deg[0]).toBeCloseTo(-8.5, 9);
    expect(fixes.elevation_m[0]).toBe(120.5);
    expect(fixes.speed_mps[0]).toBeCloseTo(18.52 / 3.6, 9);
  });
});
