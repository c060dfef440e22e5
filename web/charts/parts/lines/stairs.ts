export interface Stairs {
  /** Left edge of each label; its lead line runs down from here. */
  readonly x: readonly number[];
  /** Step of each label, 0 the lowest. */
  readonly step: readonly number[];
  readonly height: number;
}

/**
 * Places names above a row of things so that no name and no lead line crosses another: each starts above its thing (`at`,
 * rising) or, near the right edge, left of that, and stands a step higher than every later one that begins beneath it.
 */
export function stairs(labels: readonly { readonly at: number; readonly width: number }[], right: number): Stairs {
  const apart = 7;
  const x: number[] = labels.map(() => 0);
  const step: number[] = labels.map(() => 0);
  let next = Number.POSITIVE_INFINITY;
  for (let i = labels.length - 1; i >= 0; i--) {
    const label = labels[i];
    if (!label) continue;
    x[i] = Math.min(label.at, right - label.width, next - apart);
    next = x[i] as number;
    for (let j = i + 1; j < labels.length; j++) {
      if ((x[j] as number) < (x[i] as number) + label.width)
        step[i] = Math.max(step[i] as number, (step[j] as number) + 1);
    }
  }
  return { x, step, height: labels.length === 0 ? 0 : Math.max(...step) + 1 };
}
