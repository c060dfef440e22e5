import { expect, it } from "vitest";
import { fromPack_Wh, middle, stacked } from "../../../../../web/charts/parts/figure/ledgerStack.ts";

it("lays entries end to end, what is given back to the left of zero", () => {
  const sizes: Partial<Record<string, number>> = { aero: 30, rolling: 20, climb: -10, speed: -5, motor: 15 };
  const pieces = stacked((entry) => sizes[entry] ?? 0);
  const of = (name: string) => pieces.find(({ entry }) => entry === name);
  expect(of("aero")).toMatchObject({ from: 0, to: 30 });
  expect(of("rolling")).toMatchObject({ from: 30, to: 50 });
  expect(of("climb")).toMatchObject({ from: 0, to: -10 });
  expect(of("speed")).toMatchObject({ from: -10, to: -15 });
  expect(of("motor")).toMatchObject({ from: 50, to: 65 });
  expect(middle({ entry: "aero", value: 30, from: 0, to: 30 })).toBe(15);
});

it("ends at the pack's terminals, its own heat left out", () => {
  expect(fromPack_Wh({ total: 1000, packHeat: 40 } as Parameters<typeof fromPack_Wh>[0])).toBe(960);
});
