import type { Motor, MotorLoss } from "../job/schema/motor.ts";
import { W_PER_KW } from "../units.ts";
import { derived } from "./origin.ts";
import type { PartOrigin } from "./partOrigin.ts";

/** What a motor holds continuously, at the speed where its constant torque ends. */
interface FullLoad {
  readonly torque_Nm: number;
  readonly speed_radps: number;
}

type FourTerm = Extract<MotorLoss, { kind: "fourTerm" }>;
type Term = "copper_coeff" | "iron_coeff" | "windage_coeff" | "constant_W";

/** Loss of motor and controller at a full load of 37.5 kW as a share of the shaft power there, and how it splits. */
interface KindLaw {
  readonly fullLoadLoss_ratio: number;
  readonly shares: Readonly<Record<Term, number>>;
}

const reference_W = 37_500;

/**
 * Both kinds with magnets: a motor of 96.0 % [IEC60034-30-2, class IE5, 37 kW at 1500 rpm] behind a controller of 97 %: the reference
 * drive of 37 kW loses 2.25 kW at 90 % frequency and full current, class IE2 a quarter less [IEC61800-9-2, reference drives],
 * and a drive on a battery has no rectifier. 1 / (0.96 · 0.97) - 1 = 0.074.
 *
 * Split of the motor's part: copper and stray 71 %, iron and bearings 26 %, windage 3 % [Pyrhonen2014, ch. 9]; of the
 * controller's: 8 % always, 52 % with the current, 40 % with its square. As the law has no term that goes with the current, it
 * is 0.1875 + 0.9375 (current)², by least squares from no current to that of full load.
 */
const magnet: KindLaw = {
  fullLoadLoss_ratio: 0.074,
  shares: { copper_coeff: 0.775, iron_coeff: 0.132, windage_coeff: 0.018, constant_W: 0.075 },
};

/**
 * Induction: a motor of 93.5 %, nearer IE3 (93.9 % at 37 kW) than IE2 (92.7 %) [IEC60034-30-1, 4-pole motors at 50 Hz], behind 96.8 %, as
 * its controller carries the magnetising current too. 1 / (0.935 · 0.968) - 1 = 0.105. The copper loss of the magnetising current is in
 * the constant. Weighed against the textbook's law [LarminieLowry2012, eq. 8.25].
 */
const induction: KindLaw = {
  fullLoadLoss_ratio: 0.105,
  shares: { copper_coeff: 0.76, iron_coeff: 0.13, windage_coeff: 0.025, constant_W: 0.085 },
};

/** Brushed: no class of a standard. 0.78 to 0.88 in the middle of the map (common practice, no source). */
const brushed: KindLaw = {
  fullLoadLoss_ratio: 0.194,
  shares: { copper_coeff: 0.83, iron_coeff: 0.083, windage_coeff: 0.023, constant_W: 0.064 },
};

const laws: Readonly<Record<Motor["kind"], KindLaw>> = {
  interiorMagnet: magnet,
  surfaceMagnet: magnet,
  induction,
  seriesBrushed: brushed,
  magnetBrushed: brushed,
};

/**
 * Losses of a usual motor of a kind with its controller, as a four-term law.
 *
 *   loss at full load = q · (P / 37.5 kW)^(-1/4) · P,   kc = share · loss / T²,  ki = share · loss / w, …
 *
 * P = T w at full load. Machines of one shape at one speed give power with the fourth power of their length and lose with the
 * third, so the share lost goes with P^(-1/4); the printed classes from 5.5 to 90 kW go with -0.27.
 *
 * It holds for 5 to 110 kW at full load (10 to 250 kW peak), from a twentieth of the top speed up, and for overall ratios of
 * about 4 to 12 motor turns a wheel turn, as light cars have. It has no term for weakening the field and none for iron loss that
 * goes with torque; a map of the motor itself is always better.
 */
export function genericLoss(kind: Motor["kind"], fullLoad: FullLoad): FourTerm {
  const { torque_Nm, speed_radps } = fullLoad;
  const { fullLoadLoss_ratio, shares } = laws[kind];
  const shaft_W = torque_Nm * speed_radps;
  const loss_W = fullLoadLoss_ratio * (shaft_W / reference_W) ** -0.25 * shaft_W;
  return {
    kind: "fourTerm",
    copper_coeff: (shares.copper_coeff * loss_W) / (torque_Nm * torque_Nm),
    iron_coeff: (shares.iron_coeff * loss_W) / speed_radps,
    windage_coeff: (shares.windage_coeff * loss_W) / speed_radps ** 3,
    constant_W: shares.constant_W * loss_W,
  };
}

/** The generic loss of a motor known by its peaks: full load is half the peak torque (2 to 3 times, common practice), at base speed; to three digits. */
export function genericLossOfPeak(kind: Motor["kind"], peak: { torque_Nm: number; power_kW: number }): FourTerm {
  const law = genericLoss(kind, {
    torque_Nm: peak.torque_Nm / 2,
    speed_radps: (peak.power_kW * W_PER_KW) / peak.torque_Nm,
  });
  const round = (value: number) => Number(value.toPrecision(3));
  return {
    kind: "fourTerm",
    copper_coeff: round(law.copper_coeff),
    iron_coeff: round(law.iron_coeff),
    windage_coeff: round(law.windage_coeff),
    constant_W: round(law.constant_W),
  };
}

const sources = {
  induction: "[IEC60034-30-1, 4-pole motors at 50 Hz]",
  magnet: "[IEC60034-30-2, 4-pole motors]",
} as const;

/**
 * Origins of a generic loss. Between a poor motor and controller of the class (IE3 and 96 %) and a good one (IE5 and 98.5 %) the loss
 * at full load is 0.7 to 1.35 of the usual; how it splits is known less well.
 */
export function genericLossOrigins(kind: keyof typeof sources, loss: FourTerm): Readonly<Record<string, PartOrigin>> {
  const of = (value: number, low: number, high: number, note: string) =>
    derived(sources[kind], Number((low * value).toPrecision(2)), Number((high * value).toPrecision(2)), note);
  return {
    "loss.copper_coeff": of(loss.copper_coeff, 0.7, 1.35, "full-load class of motor and controller, from memory"),
    "loss.iron_coeff": of(loss.iron_coeff, 0.6, 1.7, "the split of the full-load loss, from memory"),
    "loss.windage_coeff": of(loss.windage_coeff, 0.4, 2, "the split of the full-load loss, from memory"),
    "loss.constant_W": of(loss.constant_W, 0.5, 1.6, "the split of the full-load loss, from memory"),
  };
}
