import { expect, it } from "vitest";
import { answer, refuse, showBand, showValue } from "../../../../shared/quantity/reading/answers.ts";
import { refusal, understood, written } from "./written.ts";

it("repeats what was understood beside what was typed", () => {
  expect(understood(answer(written("mass", "2 t"), 2000)).understood).toBe("2 t = 2000 kg");
  expect(understood(answer(written("mass", "2000 kg"), 2000))).toMatchObject({
    understood: "2000 kg",
    isAsTyped: true,
  });
  expect(understood(answer(written("mass", "2000"), 2000)).isAsTyped).toBe(true);
  expect(understood(answer(written("mass", "2 t"), 2000)).isAsTyped).toBe(false);
});

it("refuses what lies out of bounds, with what is allowed and what was likely meant", () => {
  const { problem, likely } = refusal(
    answer(written("mass", "5000", { label: "kerb mass", max: 4000 }), 5000, { likely: { text: "500", value: 500 } }),
  );
  expect(problem).toMatchObject({ code: "quantity-range", where: "kerb mass" });
  expect(problem.message).toBe("5000 kg is not possible (0.001 to 4000 kg); likely 500");
  expect(likely).toBe("500");
  expect(refuse(written("mass", "x"), "code", "message").problem).toEqual({
    code: "code",
    where: "mass",
    message: "message",
  });
});

it("shows values and bands in the reader's units", () => {
  expect(showValue("fraction", 0.855)).toBe("85.5 %");
  expect(showValue("mass", 1000, 3, "british")).toBe("2205 lb");
  expect(showBand("mass", 1480, 10)).toBe("1480 ± 10 kg");
  // A difference of 5 °C is one of 9 °F, whatever it is a difference from.
  expect(showBand("temperature", 20, 5, 4, "american")).toBe("68 ± 9 °F");
});
