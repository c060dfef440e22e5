/** What cars of a shape usually weigh, ready to drive and nobody aboard. */
export interface UsualWeight {
  readonly usual_kg: number;
  readonly low_kg: number;
  readonly high_kg: number;
  /** Of which such a weight is the usual one, for the sentence at the field. */
  readonly of: string;
}

/** By the id of the shape: common practice, no source. A pick-up that counts as a small saloon makes the pack too small. */
export const usualWeights: Readonly<Record<string, UsualWeight>> = {
  saloon: { usual_kg: 850, low_kg: 600, high_kg: 900, of: "a small saloon" },
  "open-two-seater": { usual_kg: 800, low_kg: 650, high_kg: 950, of: "an open two-seater" },
  estate: { usual_kg: 950, low_kg: 750, high_kg: 1150, of: "an estate" },
  microcar: { usual_kg: 450, low_kg: 300, high_kg: 600, of: "a microcar" },
  "light-van": { usual_kg: 1000, low_kg: 800, high_kg: 1300, of: "a light van" },
  "box-body": { usual_kg: 1600, low_kg: 1200, high_kg: 2200, of: "a van with a box body" },
  "pick-up-4x4": { usual_kg: 1500, low_kg: 1300, high_kg: 1800, of: "a four-wheel drive on a ladder frame" },
};
