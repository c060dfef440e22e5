/** 250 km/h: faster than the cars of a workshop's clients go, so that what goes beyond is no car. Assumed. */
export const FASTEST_CAR_mps = 70;
