/** Where a result comes from: its formula in plain text, the values of the job it hangs on most, and its source. */
interface Explanation {
  readonly result: string;
  readonly formula: string;
  /** Paths in the job; their origins tell measured from guessed. */
  readonly inputs: readonly string[];
  readonly source: string;
}

const road = [
  "vehicle.arriving_kg",
  "vehicle.removed_kg",
  "vehicle.added_kg",
  "vehicle.load_kg",
  "vehicle.roadLoad",
  "vehicle.tyres.rolling_coeff",
];
const drive = [
  "driveline.gears",
  "driveline.finalDrive_ratio",
  "driveline.finalDriveEfficiency_frac",
  "driveline.noLoadDrag_Nm",
  "motor.loss",
];
const cells = ["module.capacity_Ah", "module.openCircuit", "module.resistance"];

/** Every result that the page or a sheet shows, by the key it has in the report. */
export const explanations: Readonly<Record<string, Explanation>> = {
  testMass_kg: {
    result: "Mass as driven",
    formula: "as arrived - taken out + put in + modules x (1 + share for boxes) + load + roof",
    inputs: [
      "vehicle.arriving_kg",
      "vehicle.removed_kg",
      "vehicle.added_kg",
      "vehicle.load_kg",
      "module.mass_kg",
      "packs",
    ],
    source: "addition",
  },
  wheelPositive_Whpkm: {
    result: "Energy at the wheels",
    formula:
      "sum of F d over the steps with F > 0, over the distance; F = rolling + drag + m g sin(slope) + inertia at a step's mean speed",
    inputs: road,
    source: "UN GTR No. 15, Annex 7, paragraph 5 (from memory, recomputed)",
  },
  battery_Whpkm: {
    result: "Energy at the pack's terminals",
    formula:
      "sum of U I dt over the distance; motor power = torque x speed + loss, driveline by its efficiencies and drag, accessories added",
    inputs: [...road, ...drive, "controller.regen", "accessories"],
    source: "step by step; losses by the motor's own table or law",
  },
  wall_Whpkm: {
    result: "Energy at the socket",
    formula: "net energy drawn from the cells over the charger's efficiency",
    inputs: ["charger.efficiency_frac"],
    source: "common practice, no source",
  },
  range_km: {
    result: "Range",
    formula: "the road driven over and over from ceiling to floor, charge and temperatures going on",
    inputs: [...road, ...drive, ...cells, "packs"],
    source: "step by step, not a division of energies",
  },
  usable_kWh: {
    result: "Usable energy",
    formula: "integral of open-circuit voltage over charge from ceiling to floor, at 25 degC",
    inputs: [...cells, "packs"],
    source: "definition",
  },
  needed_km: {
    result: "Range asked for",
    formula: "usual day x winter / what an old pack still holds",
    inputs: ["usualDay_km", "allowance.winter_ratio", "allowance.aged_frac"],
    source: "common practice, no source",
  },
  missed_km: {
    result: "Road missed",
    formula: "distance of the trace less distance attained; a car that fell behind does not race to catch up",
    inputs: ["motor.envelope", "controller", "module.discharge", "driveline.limits"],
    source: "step by step",
  },
  regen_Wh: {
    result: "Given back by braking",
    formula:
      "sum of what the controller returns at its DC side; drag first, then the motor up to its limits, then friction",
    inputs: ["controller.regen", "module.charge"],
    source: "step by step",
  },
  peakBattery_A: {
    result: "Highest pack current",
    formula: "I = 2 P / (V + sqrt(V^2 - 4 R P)) at the step that asks most",
    inputs: ["module.resistance", "controller.current_A", "controller.torqueCap_Nm"],
    source: "Kirchhoff; Larminie and Lowry, 2nd edition, eq. 2.20",
  },
  gearSpeed_kmh: {
    result: "Road speed at a motor speed",
    formula: "v = rpm x 2 pi r / (60 x gear x transfer x final drive)",
    inputs: ["driveline.gears", "driveline.finalDrive_ratio", "vehicle.tyres.loadedRadius_mm"],
    source: "geometry",
  },
  steady_Whpkm: {
    result: "Energy at a steady speed",
    formula: "terminal power over speed, ten minutes after the ceiling, level, in the job's weather",
    inputs: [...road, ...drive, "accessories.standing_W"],
    source: "the same step as on a road",
  },
};
