/** Something a workshop can measure, and the values of a job that it makes known. */
export interface Measurement {
  readonly id: string;
  /** As in "measure first: …". */
  readonly name: string;
  /** What it makes known, as the subject of a sentence. */
  readonly subject: string;
  /** The place in the notebook where its result is typed. */
  readonly path: string;
  readonly covers: RegExp;
}

/**
 * What a workshop can measure, the special before the general: the first that covers a path is the one named for it.
 * Common practice, no source.
 */
const measurements: readonly Measurement[] = [
  {
    id: "winterDrive",
    name: "a drive on a cold day with a logger and a thermometer in the cabin",
    subject: "winter and heater",
    path: "conditions.winter",
    covers: /^conditions\.winter\.|^conditions\.others\.|winterDuty_frac$/,
  },
  {
    id: "coastDown",
    name: "a coast-down",
    subject: "rolling resistance and drag",
    path: "vehicle.roadLoad",
    covers: /^vehicle\.(roadLoad|tyres\.rolling|tyres\.followsTemperature)/,
  },
  {
    id: "weighing",
    name: "weighing the car and what comes out of it",
    subject: "the weight",
    path: "vehicle.kerb_kg",
    covers: /^vehicle\..*_kg$|^module\.mass_kg$|^packs\.\d+\.boxes_frac$/,
  },
  {
    id: "capacity",
    name: "a capacity test of the modules",
    subject: "the modules' capacity",
    path: "module.capacity_Ah",
    covers: /^module\.capacity_Ah$/,
  },
  {
    id: "resistance",
    name: "a load test of the modules",
    subject: "the modules' resistance",
    path: "module.resistance",
    covers: /^module\.|leads_mohm$/,
  },
  {
    id: "rollOut",
    name: "one turn of the wheel, measured with a tape",
    subject: "the wheel's radius",
    path: "vehicle.tyres.loadedRadius_mm",
    covers: /loadedRadius_mm$/,
  },
  {
    id: "spinDown",
    name: "turning the driveline by hand with a torque wrench",
    subject: "the driveline's drag",
    path: "driveline.noLoadDrag_Nm",
    covers: /noLoadDrag_Nm$|ShaftDrag_Nm$/,
  },
  {
    id: "clamp",
    name: "a clamp meter on the 12 V supply",
    subject: "lights, heater and 12 V",
    path: "accessories.standing_W",
    covers: /^accessories\./,
  },
  {
    id: "grip",
    name: "a climb of the steepest piece, wet",
    subject: "the road's grip",
    path: "environment.grip_coeff",
    covers: /grip_coeff$|^vehicle\.balance\./,
  },
  {
    id: "drive",
    name: "a drive with a logger and the pack's current",
    subject: "motor, gears and weather",
    path: "driveline.finalDriveEfficiency_frac",
    covers: /./,
  },
];

/** What a workshop would measure to know the value at a path. */
export function measurementOf(path: string): Measurement {
  const found = measurements.find(({ covers }) => covers.test(path));
  if (!found) throw new Error(`no measurement covers ${path}`);
  return found;
}
