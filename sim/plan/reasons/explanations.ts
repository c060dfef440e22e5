/** Where a result comes from: its formula in plain text, the values of the job it hangs on most, and its source. */
export interface Explanation {
  readonly result: string;
  readonly formula: string;
  /** Paths in the job, whose origins tell measured from guessed; `pack` is the pack that is spoken of, `road` the road driven. */
  readonly inputs: readonly string[];
  readonly source: string;
}

const masses = [
  ...["kerb_kg", "removed_kg", "added_kg", "converted_kg", "load_kg", "roof.mass_kg"].map((key) => `vehicle.${key}`),
  "module.mass_kg",
  "pack.boxes_frac",
  "pack.layout",
];
const weather = ["environment.temperature_degC", "environment.gravity_mps2"];
const tyres = ["rolling_coeff", "rollingRise_coeff", "followsTemperature"].map((key) => `vehicle.tyres.${key}`);
const air = ["environment.pressure_kPa", "environment.altitude_m", "environment.headWind_kmh"];
const resistance = [...masses, ...tyres, "vehicle.roadLoad", "vehicle.trailer", ...weather, ...air];
const turning = ["vehicle.tyres.loadedRadius_mm", "vehicle.tyres.wheelsInertia_kgm2", "motor.rotorInertia_kgm2"];
const gears = [
  "driveline.gears.*.gear_ratio",
  "driveline.gears.*.efficiency_frac",
  "driveline.transferBox",
  "driveline.finalDrive_ratio",
  "driveline.finalDriveEfficiency_frac",
  "driveline.wholeEfficiency_frac",
];
const drive = [...gears, "driveline.noLoadDrag_Nm", "motor.loss"];
const accessories = ["accessories.standing_W", "accessories.dcdcEfficiency_frac", "accessories.items"];
const openCircuit = ["module.capacity_Ah", "module.openCircuit", "pack.layout"];
const window = ["pack.ceiling_frac", "pack.floor_frac"];
const cells = [...openCircuit, ...window, "module.resistance", "module.resistanceByTemperature", "pack.leads_mohm"];
const braking = ["controller.regen", "module.charge", "module.coldCharge"];
const need = ["usualDay_km", "allowance.winter_ratio", "allowance.aged_frac"];
const range = [...resistance, ...turning, ...drive, ...accessories, ...cells, "environment.pack_degC", ...braking];
const envelope = ["motor.envelope", "motor.reference_V", "motor.maxSpeed_rpm", "motor.rollBack_rpm"];

/** Every result that the page or a sheet shows, by the key it has in the report. */
export const explanations: Readonly<Record<string, Explanation>> = {
  testMass_kg: {
    result: "Mass as driven",
    formula: "kerb weight - parts removed + parts added + modules x (1 + share for boxes) + load + roof",
    inputs: masses,
    source: "addition",
  },
  rolling_N: {
    result: "Rolling resistance",
    formula:
      "weight x (coefficient + rise x (speed / 100 km/h)^2) / (1 + 0.0086 for each kelvin that the air is above 20 degC): cold air makes tyres stiffer. From a coast-down: (f0 x mass / mass rolled + f1 x speed) over the same. A trailer's weight x its coefficient comes on top",
    inputs: [...masses, ...tyres, "vehicle.roadLoad", "vehicle.trailer", ...weather],
    source:
      "Gillespie, Fundamentals of Vehicle Dynamics, chapter 4; temperature by UN GTR No. 15, Annex 4 (from memory, recomputed)",
  },
  wheelPositive_Whpkm: {
    result: "Energy at the wheels",
    formula:
      "sum of F d over the steps with F > 0, over the distance; F = rolling + drag + m g sin(slope) + inertia at a step's mean speed",
    inputs: ["road", ...resistance, ...turning],
    source: "UN GTR No. 15, Annex 7, paragraph 5 (from memory, recomputed)",
  },
  battery_Whpkm: {
    result: "Energy at the pack's terminals",
    formula:
      "sum of U I dt over the distance; motor power = torque x speed + loss, driveline by its efficiencies and drag, accessories added",
    inputs: ["road", ...resistance, ...turning, ...drive, "controller.regen", ...accessories],
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
    formula: "the road driven over and over from full to empty, charge and temperatures going on",
    inputs: ["road", ...range],
    source: "step by step, not a division of energies",
  },
  usable_kWh: {
    result: "Usable energy",
    formula: "integral of open-circuit voltage over charge from full to empty, at 25 degC",
    inputs: [...openCircuit, ...window],
    source: "definition",
  },
  needed_km: {
    result: "Range asked for",
    formula:
      "usual day x range today / range at ten years, in winter: both driven, or winter's factor over what an old pack still holds",
    inputs: need,
    source: "common practice, no source",
  },
  dayUse_frac: {
    result: "Share of the range that the usual day takes",
    formula: "usual day / range",
    inputs: ["usualDay_km"],
    source: "definition",
  },
  missed_km: {
    result: "Road missed",
    formula: "distance of the trace less distance driven; a car that fell behind does not race to catch up",
    inputs: ["road", ...envelope, "controller", "module.discharge", "driveline.limits", "environment.grip_coeff"],
    source: "step by step",
  },
  regen_Wh: {
    result: "Given back by braking",
    formula:
      "sum of what the controller returns at its DC side; drag first, then the motor up to its limits, then friction",
    inputs: ["road", ...braking, "vehicle.balance", "environment.grip_coeff"],
    source: "step by step",
  },
  peakBattery_A: {
    result: "Highest pack current",
    formula: "I = 2 P / (V + sqrt(V^2 - 4 R P)) at the step that asks most",
    inputs: ["road", ...cells, "controller.current_A", "controller.torqueCap_Nm", "controller.power_kW"],
    source: "Kirchhoff; Larminie and Lowry, 2nd edition, eq. 2.20",
  },
  gearSpeed_kmh: {
    result: "Road speed at a motor speed",
    formula: "v = rpm x 2 pi r / (60 x gear x transfer x final drive)",
    inputs: [
      "driveline.gears.*.gear_ratio",
      "driveline.transferBox",
      "driveline.finalDrive_ratio",
      "vehicle.tyres.loadedRadius_mm",
      "motor.maxSpeed_rpm",
    ],
    source: "geometry",
  },
  motor_Nm: {
    result: "Torque and power of the motor",
    formula:
      "peak torque up to the speed at which the peak power is reached, power / speed above, or as the points of its curve have it; with the pack's voltage over that of the figures the whole curve stretches along its speeds",
    inputs: [...envelope, "controller.torqueCap_Nm"],
    source: "the figures are the job's; stretching with voltage is common practice, no source",
  },
  motorLoss_W: {
    result: "Losses of motor and controller",
    formula:
      "copper x torque^2 + iron x speed + windage x speed^3 + what is drawn whenever it turns, in Nm and rad/s; or between the nodes of a table; or power / efficiency - power where one efficiency is all that is known",
    inputs: ["motor.loss"],
    source: "law: Larminie and Lowry, 2nd edition, eq. 8.25; its coefficients are the job's",
  },
  steady_Whpkm: {
    result: "Energy at a steady speed",
    formula: "terminal power over speed, ten minutes after full, level, in the job's weather",
    inputs: [...resistance, "vehicle.tyres.loadedRadius_mm", ...drive, ...accessories],
    source: "the same step as on a road",
  },
  band_km: {
    result: "The band of the range",
    formula:
      "each open value is put to either end of its own band and the road driven anew; to either side the band is the square root of the sum of the squares of these single effects, as they are assumed to be independent of one another; a value at which the car does not drive the road is named apart; where the verdict hangs on it, the band at ten years in winter is instead nine of ten of 256 variants with all of them drawn at once",
    inputs: [],
    source: "the rule for independent doubts; how far a value may be off is assumed where its origin does not say",
  },
};
