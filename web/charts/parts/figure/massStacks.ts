/** A mass in or out of the car, by where it sits behind the centre of the front axle. */
export interface PlacedItem {
  readonly name: string;
  readonly mass_kg: number;
  readonly place_m: number;
  readonly kind: "out" | "in" | "box" | "load";
}

/** Masses nearer to one another than this stand on top of each other. */
const STACKED_m = 0.25;

/** Items in one column: what goes in or sits there above the line, what comes out below it. */
export interface Stack {
  readonly place_m: number;
  readonly above: PlacedItem[];
  readonly below: PlacedItem[];
  above_kg: number;
  below_kg: number;
}

/** Items that sit at about one place, in one column there. */
export function massStacks(items: readonly PlacedItem[]): Stack[] {
  const stacks: Stack[] = [];
  for (const item of items.toSorted((a, b) => a.place_m - b.place_m)) {
    const last = stacks.at(-1);
    const isNear = last !== undefined && item.place_m - last.place_m < STACKED_m;
    const stack = isNear ? last : { place_m: item.place_m, above: [], below: [], above_kg: 0, below_kg: 0 };
    if (!isNear) stacks.push(stack);
    if (item.kind === "out") {
      stack.below.push(item);
      stack.below_kg += item.mass_kg;
    } else {
      stack.above.push(item);
      stack.above_kg += item.mass_kg;
    }
  }
  return stacks;
}
