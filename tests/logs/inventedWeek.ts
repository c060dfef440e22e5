const DAYS = 5;

/** A week of five days alike that each draw more than a night gives back, from a short formula and not from the simulation. */
export function inventedWeek(day_frac: number) {
  const at_h = [8];
  const soc_frac = [0.95];
  for (let day = 0; day < DAYS; day++) {
    const last = soc_frac[soc_frac.length - 1] as number;
    at_h.push(24 * day + 9, 24 * day + 17, 24 * day + 18, 24 * day + 32);
    soc_frac.push(last - day_frac, last - day_frac, last - 2 * day_frac, last - day_frac / 2);
  }
  at_h.push(7 * 24 + 8);
  soc_frac.push(0.95);
  const least = Math.min(...soc_frac);
  return { course: { at_h, soc_frac }, lowest: { soc_frac: least, at_h: at_h[soc_frac.indexOf(least)] as number } };
}
