import type { Motor } from "../../../shared/job/schema/motor.ts";
import { genericLoss } from "../../../shared/parts/genericLoss.ts";
import { InputError, type Problem } from "../../../shared/problems.ts";
import { RADPS_PER_RPM, W_PER_KW } from "../../../shared/units.ts";
import { nonNegativeLeastSquares } from "../../math/nonNegativeLeastSquares.ts";
import { type FourTermLaw, fourTermLoss_W } from "../../motor/loss.ts";

/** The handful of figures on a motor's datasheet. Efficiencies are of motor and controller together. */
export interface Datasheet {
  /** For the usual losses where the points do not settle them. */
  readonly kind: Motor["kind"];
  readonly peakTorque_Nm: number;
  readonly peakPower_kW: number;
  readonly continuousPower_kW: number;
  readonly topSpeed_rpm: number;
  readonly rated_V: number;
  readonly points: readonly EfficiencyPoint[];
}

interface EfficiencyPoint {
  readonly speed_rpm: number;
  readonly torque_Nm: number;
  readonly efficiency_frac: number;
}

/** How well the law meets one point of the datasheet. */
interface FitResidual extends EfficiencyPoint {
  readonly given_W: number;
  readonly fitted_W: number;
  readonly fitted_frac: number;
}

/** A motor from its datasheet: what the job file wants of envelope and loss, and how far to trust it. */
export interface FittedMotor {
  readonly law: FourTermLaw;
  readonly envelope: { readonly kind: "peak"; readonly torque_Nm: number; readonly power_kW: number };
  readonly reference_V: number;
  readonly maxSpeed_rpm: number;
  /** Where constant torque ends and constant power begins. */
  readonly baseSpeed_rpm: number;
  readonly continuousPower_kW: number;
  /** Loss at continuous power and base speed, in watts: what the cooling carries off continuously. */
  readonly continuousLoss_W: number;
  readonly residuals: readonly FitResidual[];
  readonly notes: readonly string[];
}

/**
 * The four-term law nearest to a datasheet's efficiency points, with the envelope of its peak torque and power.
 *
 *   P_loss = kc T² + ki w + kw w³ + C      [LarminieLowry2012, eq. 8.25]
 *
 * One or two points do not settle four coefficients. So each coefficient is drawn, weakly, towards the generic loss of a motor of
 * this kind and continuous power (`genericLoss`), itself first scaled to the points; the pull is the weaker the more
 * points there are. Coefficients are not negative; losses are weighed by their relative error. Without a point the
 * generic loss is all there is, and a note reports it.
 *
 * Throws an InputError for figures that contradict each other.
 */
export function fitDatasheet(sheet: Datasheet): FittedMotor {
  const problems = sheetProblems(sheet);
  if (problems.length > 0) throw new InputError(problems);
  const base_radps = (sheet.peakPower_kW * W_PER_KW) / sheet.peakTorque_Nm;
  const continuous_Nm = (sheet.continuousPower_kW * W_PER_KW) / base_radps;
  const usual = genericLoss(sheet.kind, { torque_Nm: continuous_Nm, speed_radps: base_radps });
  const points = sheet.points.map((point) => {
    const speed_radps = point.speed_rpm * RADPS_PER_RPM;
    return { ...point, speed_radps, given_W: point.torque_Nm * speed_radps * (1 / point.efficiency_frac - 1) };
  });
  const law = points.length === 0 ? withoutKind(usual) : pullTowards(usual, points);
  const continuousLoss_W = fourTermLoss_W(law, continuous_Nm, base_radps);
  const residuals = points.map(({ speed_rpm, torque_Nm, efficiency_frac, speed_radps, given_W }) => {
    const fitted_W = fourTermLoss_W(law, torque_Nm, speed_radps);
    const shaft_W = torque_Nm * speed_radps;
    return { speed_rpm, torque_Nm, efficiency_frac, given_W, fitted_W, fitted_frac: shaft_W / (shaft_W + fitted_W) };
  });
  return {
    law,
    envelope: { kind: "peak", torque_Nm: sheet.peakTorque_Nm, power_kW: sheet.peakPower_kW },
    reference_V: sheet.rated_V,
    maxSpeed_rpm: sheet.topSpeed_rpm,
    baseSpeed_rpm: base_radps / RADPS_PER_RPM,
    continuousPower_kW: sheet.continuousPower_kW,
    continuousLoss_W,
    residuals,
    notes: [
      ...notesOn(residuals),
      `${sheet.continuousPower_kW} kW continuous becomes the heat limit: cooling that carries off the ${Number(continuousLoss_W.toPrecision(2))} W lost at base speed, in air of 40 degC`,
    ],
  };
}

function withoutKind({ copper_coeff, iron_coeff, windage_coeff, constant_W }: FourTermLaw): FourTermLaw {
  return { copper_coeff, iron_coeff, windage_coeff, constant_W };
}

interface SheetLoss {
  readonly torque_Nm: number;
  readonly speed_radps: number;
  readonly given_W: number;
}

/** Least squares of the relative errors at the points and, weakly, of the relative change of each coefficient. */
function pullTowards(usual: FourTermLaw, points: readonly SheetLoss[]): FourTermLaw {
  const ratios = points.map((point) => point.given_W / fourTermLoss_W(usual, point.torque_Nm, point.speed_radps));
  // The geometric mean, written out: the package of the logs would come before the answer for this line alone.
  const scale = Math.exp(ratios.reduce((sum, ratio) => sum + Math.log(ratio), 0) / ratios.length);
  const start = [usual.copper_coeff, usual.iron_coeff, usual.windage_coeff, usual.constant_W].map(
    (coeff) => coeff * scale,
  );
  const pull = points.length < 4 ? 0.015 : 0.002;
  const terms = (torque_Nm: number, speed_radps: number) => [torque_Nm * torque_Nm, speed_radps, speed_radps ** 3, 1];
  const rows = points.map((point) =>
    terms(point.torque_Nm, point.speed_radps).map((term, j) => (term * start[j]) / point.given_W),
  );
  const pulls = start.map((_, j) => start.map((__, k) => (j === k ? pull : 0)));
  const targets = [...points.map(() => 1), ...start.map(() => pull)];
  const [copper, iron, windage, constant] = nonNegativeLeastSquares([...rows, ...pulls], targets);
  return {
    copper_coeff: copper * start[0],
    iron_coeff: iron * start[1],
    windage_coeff: windage * start[2],
    constant_W: constant * start[3],
  };
}

function notesOn(residuals: readonly FitResidual[]): string[] {
  if (residuals.length === 0)
    return [
      "no efficiency point: the losses are those of a usual motor of its kind and size, assumed, and wait for a measured figure",
    ];
  const worst = residuals.reduce(
    (most, point) => Math.max(most, Math.abs(point.fitted_frac - point.efficiency_frac)),
    0,
  );
  const met = `the law meets the ${residuals.length === 1 ? "point" : `${residuals.length} points`} to ${(100 * worst).toPrecision(2)} percentage points of efficiency`;
  return residuals.length < 4
    ? [
        met,
        `${residuals.length} of at least 4 points that would settle the law: its split between copper, iron, windage and constant is assumed`,
      ]
    : [met];
}

function sheetProblems(sheet: Datasheet): Problem[] {
  const problems: Problem[] = [];
  const report = (code: string, where: string, message: string) => void problems.push({ code, where, message });
  const { peakTorque_Nm, peakPower_kW, continuousPower_kW, topSpeed_rpm, rated_V } = sheet;
  for (const [where, value] of Object.entries({
    peakTorque_Nm,
    peakPower_kW,
    continuousPower_kW,
    topSpeed_rpm,
    rated_V,
  })) {
    if (!(value > 0) || !Number.isFinite(value)) report("sheet-range", where, `found ${value}, above 0 wanted`);
  }
  if (problems.length > 0) return problems;
  const most_kW = (peakTorque_Nm * topSpeed_rpm * RADPS_PER_RPM) / W_PER_KW;
  if (peakPower_kW > most_kW) {
    report(
      "sheet-power",
      "peakPower_kW",
      `found ${peakPower_kW} kW, ${peakTorque_Nm} Nm at ${topSpeed_rpm} rpm is only ${most_kW.toPrecision(3)} kW`,
    );
  }
  if (continuousPower_kW > peakPower_kW) {
    report(
      "sheet-power",
      "continuousPower_kW",
      `found ${continuousPower_kW} kW, at most the peak power of ${peakPower_kW} kW wanted`,
    );
  }
  sheet.points.forEach(({ speed_rpm, torque_Nm, efficiency_frac }, i) => {
    const where = `points[${i}]`;
    if (!(efficiency_frac > 0 && efficiency_frac < 1)) {
      const likely = efficiency_frac > 2 && efficiency_frac < 100 ? `; likely ${efficiency_frac / 100}` : "";
      report(
        "sheet-efficiency",
        `${where}.efficiency_frac`,
        `found ${efficiency_frac}, above 0 and below 1 wanted${likely}`,
      );
    }
    const isSwapped =
      torque_Nm > peakTorque_Nm && torque_Nm <= topSpeed_rpm && speed_rpm > 0 && speed_rpm <= peakTorque_Nm;
    if (isSwapped) {
      report(
        "sheet-swapped",
        where,
        `found ${speed_rpm} rpm and ${torque_Nm} Nm, likely changed over: ${torque_Nm} rpm and ${speed_rpm} Nm`,
      );
      return;
    }
    if (!(speed_rpm > 0 && speed_rpm <= topSpeed_rpm)) {
      report("sheet-range", `${where}.speed_rpm`, `found ${speed_rpm} rpm, above 0 to ${topSpeed_rpm} rpm wanted`);
    }
    if (!(torque_Nm > 0 && torque_Nm <= peakTorque_Nm)) {
      report("sheet-range", `${where}.torque_Nm`, `found ${torque_Nm} Nm, above 0 to ${peakTorque_Nm} Nm wanted`);
    }
  });
  return problems;
}
