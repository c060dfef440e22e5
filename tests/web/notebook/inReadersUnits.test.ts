import { describe, expect, it } from "vitest";
import { inReadersUnits } from "../../../web/notebook/inReadersUnits.ts";

const sentence = "It goes 70.1 km at 48.3 km/h on 105 Wh/km, weighs 1140 kg and gives 110 Nm; 2.5 % more than 75 kWh.";

describe("a sentence in the reader's units", () => {
  it("is left as it is for a metric reader", () => {
    expect(inReadersUnits(sentence, "metric")).toBe(sentence);
  });

  it("has miles, hundredweights and pound-feet for a British one, and nothing else changed", () => {
    // 70.1/1.609344 = 43.56; 48.3/1.609344 = 30.01; 105·1.609344 = 168.98; 1140/50.80234544 = 22.44; 110/1.3558179 = 81.13
    expect(inReadersUnits(sentence, "british")).toBe(
      "It goes 43.6 miles at 30 mph on 169 Wh/mile, weighs 22.4 cwt and gives 81.1 lb ft; 2.5 % more than 75 kWh.",
    );
  });

  it("has pounds for an American one", () => {
    // 1140/0.45359237 = 2513.3
    expect(inReadersUnits("1140 kg", "american")).toBe("2510 lb");
  });
});
