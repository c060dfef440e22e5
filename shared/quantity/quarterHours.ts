/** From here on halves of an hour are fine enough: no charge is known to a quarter of one in ten hours. */
const LONG_h = 10;

/** Hours as people speak of a wait, rounded up to a quarter and from ten on to a half, never less than a quarter: 3¼ h. */
export function quarterHours(time_h: number): string {
  const quarters = Math.max(1, Math.ceil(4 * time_h - 1e-9));
  const whole = time_h > LONG_h ? quarters + (quarters % 2) : quarters;
  const part = ["", "¼", "½", "¾"][whole % 4];
  const hours = Math.floor(whole / 4);
  return `${hours === 0 && part !== "" ? "" : hours}${part} h`;
}
