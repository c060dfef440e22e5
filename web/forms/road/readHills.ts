import type { Road } from "../../../shared/job/schema/road.ts";
import { InputError, type Problem } from "../../../shared/problems.ts";
import { M_PER_FT, M_PER_KM, M_PER_MILE } from "../../../shared/units.ts";

const pointPattern =
  /^(\d+(?:[.,]\d+)?)\s*(km|kilometres?|m|metres?|mi|miles?)?(?:\s*[:=]\s*|\s+(?:at\s+)?)(-?\d+(?:[.,]\d+)?)\s*(m|metres?|ft|feet)?$/i;

/**
 * Heights along a road, typed as distance and height: `0 km 120 m; 2.5 km 180 m`, a point a line or parted by
 * semicolons. Without units they are km and m. Throws `InputError` with every point that cannot be read, where the
 * distances do not rise, and where they begin after the start.
 */
export function readHills(text: string): NonNullable<Road["hills"]> {
  const distance_km: number[] = [];
  const elevation_m: number[] = [];
  const problems: Problem[] = [];
  const pieces = text.split(/[;\n]/).flatMap((piece) => (piece.trim() === "" ? [] : [piece.trim()]));
  pieces.forEach((piece, i) => {
    const where = `height ${i + 1}`;
    const found = pointPattern.exec(piece);
    if (!found) {
      const message = `found "${piece.slice(0, 60)}", wanted a distance and a height like "2.5 km 180 m"`;
      problems.push({ code: "badHeight", where, message });
      return;
    }
    const number = (digits: string | undefined) => Number((digits ?? "").replace(",", "."));
    const perDistance_m = /^mi/i.test(found[2] ?? "") ? M_PER_MILE : /^m/i.test(found[2] ?? "") ? 1 : M_PER_KM;
    const place_km = (number(found[1]) * perDistance_m) / M_PER_KM;
    const before_km = distance_km.at(-1);
    if (before_km !== undefined && place_km <= before_km) {
      const message = `found ${place_km} km after ${before_km} km, distances must rise`;
      problems.push({ code: "badHeight", where, message });
    }
    if (before_km === undefined && place_km !== 0) {
      problems.push({ code: "badHeight", where, message: `found ${place_km} km, the first distance must be 0 km` });
    }
    distance_km.push(place_km);
    elevation_m.push(number(found[3]) * (/^f/i.test(found[4] ?? "") ? M_PER_FT : 1));
  });
  if (problems.length === 0 && distance_km.length < 2) {
    const message = `found ${distance_km.length} heights, wanted two or more like "0 km 120 m; 2.5 km 180 m"`;
    problems.push({ code: "badHeight", where: "heights", message });
  }
  if (problems.length > 0) throw new InputError(problems);
  return { distance_km, elevation_m };
}
