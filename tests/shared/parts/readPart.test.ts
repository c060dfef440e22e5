import { expect, it } from "vitest";
import { readPart } from "../../../shared/parts/readPart.ts";
import { TyresPart, tyres } from "../../../shared/parts/tyres.ts";
import { InputError } from "../../../shared/problems.ts";

it("gives back a part that went out as text", () => {
  expect(readPart(TyresPart, JSON.parse(JSON.stringify(tyres[0])))).toEqual(tyres[0]);
});

it("says every fault at once, with the place in the file", () => {
  const broken = { ...tyres[0], data: { ...tyres[0].data, rolling_coeff: 2, colour: "black" } };
  let problems: { code: string; where: string }[] = [];
  try {
    readPart(TyresPart, broken, "tyres.json");
  } catch (error) {
    if (error instanceof InputError) problems = error.problems.map(({ code, where }) => ({ code, where }));
  }
  expect(problems).toEqual([
    { code: "outOfRange", where: "tyres.json data.rolling_coeff" },
    { code: "unknownKey", where: "tyres.json data.colour" },
    // The value of 2 is outside the band that came with it as well.
    { code: "contradicts", where: "tyres.json origins.rolling_coeff" },
  ]);
});
