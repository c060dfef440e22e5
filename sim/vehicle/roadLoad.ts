/** What road and air ask of one vehicle at a standing temperature and air density. Fixed for a run. */
export interface RoadLoad {
  /** Everything that is moved: car, load, pack, trailer. */
  readonly mass_kg: number;
  readonly weight_N: number;
  /** Rolling resistance that goes with the weight on the road, so with the cosine of the slope. */
  readonly rollingWeight_N: number;
  readonly rollingWeight_Npmps2: number;
  /** Rolling part of measured coast-down coefficients. */
  readonly rollingFixed_N: number;
  readonly rolling_Npmps: number;
  /** Half of air density times drag area, or f2 of a coast-down. */
  readonly drag_Npmps2: number;
  readonly headWind_mps: number;
  /** Drag of hubs, brakes and undriven shafts, at the tyres. */
  readonly wheelDrag_N: number;
}

/** The same road load with other parts, in the same shape. */
export function roadWith(road: RoadLoad, parts: Partial<RoadLoad>): RoadLoad {
  return {
    mass_kg: parts.mass_kg ?? road.mass_kg,
    weight_N: parts.weight_N ?? road.weight_N,
    rollingWeight_N: parts.rollingWeight_N ?? road.rollingWeight_N,
    rollingWeight_Npmps2: parts.rollingWeight_Npmps2 ?? road.rollingWeight_Npmps2,
    rollingFixed_N: parts.rollingFixed_N ?? road.rollingFixed_N,
    rolling_Npmps: parts.rolling_Npmps ?? road.rolling_Npmps,
    drag_Npmps2: parts.drag_Npmps2 ?? road.drag_Npmps2,
    headWind_mps: parts.headWind_mps ?? road.headWind_mps,
    wheelDrag_N: parts.wheelDrag_N ?? road.wheelDrag_N,
  };
}

/**
 * Rolling resistance while the car moves, in newtons; callers drop it at rest.
 *
 *   F = m g cos θ (c0 + c2 v²)   or   f0 + f1 v      [Gillespie1992, ch. 4] [GTR15, Annex 4]
 */
export function rolling_N(road: RoadLoad, speed_mps: number, cosSlope: number): number {
  return (
    cosSlope * (road.rollingWeight_N + road.rollingWeight_Npmps2 * speed_mps * speed_mps) +
    road.rollingFixed_N +
    road.rolling_Npmps * speed_mps
  );
}

/** Air drag, in newtons, with the sign of the air's speed over the car: ½ ρ CdA (v + w)|v + w|. [Gillespie1992, ch. 4] */
export function drag_N(road: RoadLoad, speed_mps: number): number {
  const air_mps = speed_mps + road.headWind_mps;
  return road.drag_Npmps2 * air_mps * Math.abs(air_mps);
}
