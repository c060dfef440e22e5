import type { PackAnswer, Verdict } from "./packAnswer.ts";

/** A pack before its verdict. */
type Judged = Omit<PackAnswer, "verdict">;

/**
 * The verdict on each pack, by what is left of the usual day in winter at ten years:
 *
 *   not enough        the car does not drive the road, now or in winter, or it does not get home
 *   only just         it gets home with the values as taken, but not with all that they may be
 *   enough            it gets home with the whole band: its low end is that of 95 of 100 cases
 *   more than enough  so does a smaller pack
 *
 * None for a pack that may not be used; and where the band is not known yet, only what it cannot change.
 */
export function verdicts(packs: readonly Judged[], isBandKnown: boolean): (Verdict | undefined)[] {
  const alone = packs.map((pack) => verdictAlone(pack, isBandKnown));
  return packs.map((pack, i) => {
    if (alone[i] !== "enough") return alone[i];
    const isSmaller = (j: number) => packs[j].usable_kWh < pack.usable_kWh;
    return packs.some((_, j) => alone[j] === "enough" && isSmaller(j)) ? "more than enough" : "enough";
  });
}

function verdictAlone({ stop, cannot, left, failsIn, mayFail }: Judged, isBandKnown: boolean): Verdict | undefined {
  if (stop) return undefined;
  if (cannot || failsIn || !left || left.tenYearsWinter.value < 0) return "not enough";
  if (!isBandKnown) return undefined;
  return left.tenYearsWinter.low < 0 || mayFail.length > 0 ? "only just" : "enough";
}
