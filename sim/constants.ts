/** Fixed figures of the physics. What a job may change (gravity, temperature) is in the job, not here. */

/** Density of dry air at the reference conditions of road-load work, 20 degC and 100 kPa. [GTR15, Annex 4], 4 digits. */
export const REFERENCE_AIR_kgpm3 = 1.189;
export const REFERENCE_AIR_K = 293.15;
export const REFERENCE_AIR_Pa = 1e5;

/** Share by which rolling resistance falls for each kelvin above 20 degC. [GTR15, Annex 4, K0], from memory: 8.6e-3. */
export const TYRE_TEMPERATURE_coeff = 8.6e-3;

/** Lower heating value of a litre: petrol 32 MJ, diesel 36 MJ. From memory. */
export const FUEL_PER_LITRE_kWh = { petrol: 8.9, diesel: 10 } as const;
