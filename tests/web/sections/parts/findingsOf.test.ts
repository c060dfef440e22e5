import { expect, it } from "vitest";
import { message } from "../../../../shared/quantity/message.ts";
import { findingsOf } from "../../../../web/sections/parts/findingsOf.ts";
import { inventedCandidate } from "../../../support/inventedCandidate.ts";

const finding = (kind: string, words: string) => ({ kind, weight: "note" as const, sentence: message`${words}` });

it("says each sentence of the kinds asked for once, with the packs that it holds for unless it holds for all", () => {
  const both = finding("regen", "Of both.");
  const candidates = [
    inventedCandidate(5, { findings: [both, finding("regen", "Of one."), finding("other", "Of another kind.")] }),
    inventedCandidate(10, { findings: [both] }),
  ];
  expect(findingsOf(candidates, ["regen"], "metric")).toEqual(["Of both.", "5 kWh: Of one."]);
});
