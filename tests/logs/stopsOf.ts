/** The rules on emissions in real driving count as standing what is under 1 km/h [EU2016-427, Annex IIIA, point 6.8; from memory]. */
const STANDING_BELOW_mps = 1 / 3.6;

/** Stops on the way, of a truth and of what came back alike: times of standing, however short, with driving on both sides. */
export function stopsOf(speed_mps: ArrayLike<number>): number {
  let goes = 0;
  let isGoing = false;
  for (let i = 0; i < speed_mps.length; i++) {
    const goesOn = speed_mps[i] >= STANDING_BELOW_mps;
    goes += goesOn && !isGoing ? 1 : 0;
    isGoing = goesOn;
  }
  return Math.max(0, goes - 1);
}
