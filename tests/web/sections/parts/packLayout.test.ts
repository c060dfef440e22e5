import { expect, it } from "vitest";
import { layoutInWords, packLayout } from "../../../../web/sections/parts/packLayout.ts";

it("names how modules are joined as the trade writes it, and says what that means", () => {
  const pack = { seriesModules: 5, parallelModules: 2 };
  expect(packLayout(pack)).toBe("5s2p");
  expect(layoutInWords(pack)).toBe("5s2p: 5 modules in series, 2 such strings in parallel.");
  expect(layoutInWords({ seriesModules: 1, parallelModules: 1 })).toBe("1s1p: 1 module in series, a single string.");
});
