import { describe, expect, it } from "vitest";
import { inReadersUnits } from "../../../shared/quantity/inReadersUnits.ts";

const sentence = "It goes 70.1 km at 48.3 km/h on 105 Wh/km, weighs 1140 kg and gives 110 Nm; 2.5 % more than 75 kWh.";

describe("a sentence in the reader's units", () => {
  it("is left as it is for a metric reader", () => {
    expect(inReadersUnits(sentence, "metric")).toBe(sentence);
  });

  it("has miles, pounds and pound-feet for a British one, and nothing else changed", () => {
    // 70.1/1.609344 = 43.56; 48.3/1.609344 = 30.01; 105·1.609344 = 168.98; 1140/0.45359237 = 2513.3; 110/1.3558179 = 81.13
    expect(inReadersUnits(sentence, "british")).toBe(
      "It goes 43.6 miles at 30 mph on 169 Wh/mile, weighs 2510 lb and gives 81.1 lb ft; 2.5 % more than 75 kWh.",
    );
  });

  it("has pounds for an American one", () => {
    // 1140/0.45359237 = 2513.3
    expect(inReadersUnits("1140 kg", "american")).toBe("2510 lb");
  });

  it("keeps a range together", () => {
    // 8/1.609344 = 4.971, 12/1.609344 = 7.456; 1.4/0.09290304 = 15.07, 1.9/0.09290304 = 20.45
    expect(inReadersUnits("none below 8 to 12 km/h, 1.4 to 1.9 m² for small cars", "british")).toBe(
      "none below 4.97 to 7.46 mph, 15.1 to 20.5 ft² for small cars",
    );
    expect(inReadersUnits("a gap of 2 to 300 kg", "british")).toBe("a gap of 4.41 to 661 lb");
  });

  it("turns lengths over, and leaves minutes and letters alone", () => {
    // 2680/0.3048 = 8793; 300/25.4 = 11.81
    expect(inReadersUnits("a gap of 2 min 3 s, 2680 m, at 08:12 m; 300 mm wide", "american")).toBe(
      "a gap of 2 min 3 s, 8790 ft, at 08:12 m; 11.8 in wide",
    );
  });
});
