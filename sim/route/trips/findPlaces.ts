import { S_PER_DAY, S_PER_H } from "../../../shared/units.ts";
import { geodesicLeg } from "../log/geodesicLeg.ts";
import type { Parking } from "./splitTrips.ts";

/** Somewhere the car parks. Positions stay with the log and never enter a trace or a job. */
export interface Place {
  readonly label: string;
  readonly latitude_deg: number;
  readonly longitude_deg: number;
  readonly parked_s: number;
  /** Indexes of the parkings at this place. */
  readonly parkings: readonly number[];
}

/** Parkings nearer than this are one place: a car park's width and a receiver's error. Assumed. */
const SAME_PLACE_m = 200;
/** A place is called work only where the car stands this long by day on average. */
const LEAST_WORK_s = 2 * S_PER_H;

/**
 * Places where the car parks, the longest first: parkings within 200 m of a place's middle belong to it. The one with
 * the most hours between 22 and 6, if any, is called home, the other one with the most hours between 6 and 22 work; the rest
 * are numbered. Labels are a guess that the user may change. Parkings without a position belong to no place.
 */
export function findPlaces(parkings: readonly Parking[], utcOffset_s: number): readonly Place[] {
  const clusters: {
    latitude_deg: number;
    longitude_deg: number;
    members: number[];
    parked_s: number;
    night_s: number;
  }[] = [];
  parkings.forEach((parking, index) => {
    if (Number.isNaN(parking.latitude_deg)) {
      return;
    }
    const long_s = parking.to_s - parking.from_s;
    const night_s = nightSeconds(parking.from_s + utcOffset_s, parking.to_s + utcOffset_s);
    const near = clusters.find(
      (one) =>
        geodesicLeg(one.latitude_deg, one.longitude_deg, parking.latitude_deg, parking.longitude_deg).length_m <
        SAME_PLACE_m,
    );
    if (!near) {
      const { latitude_deg, longitude_deg } = parking;
      clusters.push({ latitude_deg, longitude_deg, members: [index], parked_s: long_s, night_s });
      return;
    }
    near.members.push(index);
    near.parked_s += long_s;
    near.night_s += night_s;
    near.latitude_deg += (parking.latitude_deg - near.latitude_deg) / near.members.length;
    near.longitude_deg += (parking.longitude_deg - near.longitude_deg) / near.members.length;
  });
  clusters.sort((a, b) => b.parked_s - a.parked_s);
  // Without a night in the log there is no telling where the car lives.
  const home = clusters.reduce<(typeof clusters)[number] | undefined>(
    (best, one) => (one.night_s > (best?.night_s ?? 0) ? one : best),
    undefined,
  );
  const work = clusters.find((one) => {
    const day_s = one.parked_s - one.night_s;
    return one !== home && day_s / one.members.length >= LEAST_WORK_s && day_s > one.night_s;
  });
  let number = 0;
  return clusters.map((one) => ({
    label: one === home ? "home" : one === work ? "work" : `place ${++number}`,
    latitude_deg: one.latitude_deg,
    longitude_deg: one.longitude_deg,
    parked_s: one.parked_s,
    parkings: one.members,
  }));
}

/** Seconds between 22:00 and 06:00 in a span of local time. */
function nightSeconds(from_s: number, to_s: number): number {
  let night_s = 0;
  const firstDay = Math.floor(from_s / S_PER_DAY) - 1;
  for (let day = firstDay; day * S_PER_DAY < to_s; day++) {
    const [start_s, end_s] = [day * S_PER_DAY + 22 * S_PER_H, day * S_PER_DAY + 30 * S_PER_H];
    night_s += Math.max(0, Math.min(to_s, end_s) - Math.max(from_s, start_s));
  }
  return night_s;
}
