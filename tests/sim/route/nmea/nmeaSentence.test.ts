import { describe, expect, it } from "vitest";
import { sentencesOf } from "../../../../sim/route/nmea/nmeaSentence.ts";

// Sentences printed all over the trade with their checksums, from memory.
const rmc = "$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A";
const gga = "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47";

describe("a line", () => {
  it("gives its sentences, whatever stands around them", () => {
    const found = [...sentencesOf(`12:35 ${rmc} ${gga}`)];
    expect(found.map((each) => "type" in each && each.type)).toEqual(["RMC", "GGA"]);
    expect(found[0]).toMatchObject({ hasChecksum: true });
    expect("fields" in found[0] && found[0].fields[7]).toBe("022.4");
  });
  it("has none of other kinds", () => {
    expect([...sentencesOf("$GPGSV,1,1,00*79")]).toEqual([]);
  });
});

describe("a sentence", () => {
  const faultOf = (line: string) => [...sentencesOf(line)].map((each) => ("fault" in each ? each.fault : "sound"));
  it("changed on its way is known by its checksum", () => {
    expect(faultOf(rmc.replace("4807", "4806"))).toEqual(["badChecksum"]);
    expect(faultOf(rmc)).toEqual(["sound"]);
  });
  it("without a checksum is taken as it stands, but not when it is cut short or out of form", () => {
    expect(faultOf(rmc.replace("*6A", ""))).toEqual(["sound"]);
    expect(faultOf("$GPRMC,1")).toEqual(["brokenSentence"]);
    expect(faultOf(rmc.replace("*6A", "").replace(",A,", ",Q,"))).toEqual(["brokenSentence"]);
    expect(faultOf(rmc.slice(1))).toEqual(["brokenSentence"]);
  });
});
