import { expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { readLog } from "../../../../sim/route/readLog.ts";

const bytes = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const fit = bytes(`\x0e\x10\x54\x08\xff\x00\x00\x00.FIT\x00\x00${"\x40\x00\x01".repeat(50)}`);

it.each([
  ["a FIT file", fit, "found a FIT file, as head units and watches record it; export the activity as GPX or TCX"],
  ["GeoJSON", bytes('{"type":"FeatureCollection","features":[]}'), "found GeoJSON, .* export the log as GPX"],
  ["other JSON", bytes('[{"lat":1,"lon":2}]'), "found JSON, .* export the log as GPX"],
  [
    "a spreadsheet",
    bytes("PK\x03\x04\0\0[Content_Types].xml\0xl/workbook.xml"),
    "found a spreadsheet; open it and save",
  ],
  ["an open spreadsheet", bytes("PK\x03\x04mimetypeapplication/vnd.oasis.opendocument.spreadsheet"), "a spreadsheet"],
  ["a document", bytes("PK\x03\x04\0\0[Content_Types].xml\0word/document.xml"), "found an office document"],
  ["a packed map file", bytes("PK\x03\x04\0\0doc.kml"), "found a packed map file \\(KMZ\\); unpack it"],
  ["an archive", bytes("PK\x03\x04\0\0monday.csv"), "found a zip archive; unpack it and bring the file inside"],
  ["a gzip archive", bytes("\x1f\x8b\x08\0"), "found a gzip archive; unpack it"],
])("refuses %s and says what to do instead", (_, content, sentence) => {
  expect(() => readLog("log", content)).toThrow(new RegExp(sentence));
});

it("echoes no more of a file than a person reads", () => {
  const long = "x".repeat(200_000);
  for (const text of [`<${long}/>`, `${long},${long}\n1,2\n3,4\n5,6\n7,8\n`, `"${long}"\n`.repeat(5)]) {
    const refusal = (() => {
      try {
        readLog("log", bytes(text));
        return "";
      } catch (error) {
        if (!(error instanceof InputError)) throw error;
        return error.message;
      }
    })();
    expect(refusal).not.toBe("");
    expect(refusal.length).toBeLessThan(500);
  }
});
