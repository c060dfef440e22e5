import { describe, expect, it } from "vitest";
import { faultsOf } from "../support/comparison.ts";
import { topics } from "./against/topics.ts";

describe.each(Object.entries(topics))("%s", (_, comparisons) => {
  it.each(comparisons.map((comparison) => [comparison.quantity, comparison.source, comparison] as const))(
    "%s is that of %s",
    (_quantity, _source, comparison) => {
      expect(faultsOf(comparison)).toEqual([]);
    },
  );
});
