/**
 * Conversion factors and the list of unit suffixes that names in this project may end in.
 * Exact factors are exact by definition: international foot, inch, mile and pound (1959 agreement),
 * the litre, the degree and the hour [SIBrochure9, table 8], conventional gravity, horsepowers and
 * hundredweights [NIST811, appendix B.8].
 */

export const S_PER_MIN = 60;
export const S_PER_H = 3600;
export const S_PER_DAY = 24 * S_PER_H;
export const M_PER_KM = 1000;
export const M_PER_MILE = 1609.344; // exact
export const M_PER_IN = 0.0254; // exact
export const M_PER_FT = 0.3048; // exact
export const M_PER_YARD = 0.9144; // exact
export const MM_PER_M = 1000;
export const MPS_PER_KMH = 1 / 3.6; // exact
export const MPS_PER_MPH = M_PER_MILE / S_PER_H; // exact: 0.44704
export const MPS_PER_KNOT = 1852 / S_PER_H; // exact
export const J_PER_WH = 3600; // exact
export const J_PER_KWH = 3.6e6; // exact
export const WH_PER_KWH = 1000;
export const W_PER_KW = 1000;
export const C_PER_AH = 3600; // exact
export const KG_PER_LB = 0.45359237; // exact
export const KG_PER_CWT = 112 * KG_PER_LB; // exact: the hundredweight of 112 lb
export const KG_PER_CWT_SHORT = 100 * KG_PER_LB; // exact: the hundredweight of 100 lb
export const STANDARD_GRAVITY_mps2 = 9.80665; // exact; conventional, for force units
export const N_PER_LBF = KG_PER_LB * STANDARD_GRAVITY_mps2; // exact
export const NM_PER_LBFT = N_PER_LBF * 12 * M_PER_IN; // exact
export const W_PER_BHP = 550 * N_PER_LBF * 12 * M_PER_IN; // exact: 550 ft lbf/s
export const W_PER_PS = 75 * STANDARD_GRAVITY_mps2; // exact: 75 kgf m/s
export const PA_PER_PSI = N_PER_LBF / (M_PER_IN * M_PER_IN); // exact
export const PA_PER_ATM = 101_325; // exact: the standard atmosphere
export const PA_PER_MMHG = 133.3224; // conventional millimetre of mercury, to the printed digits
export const PA_PER_INHG = 3386.389; // conventional inch of mercury, to the printed digits
export const PA_PER_KPA = 1000;
export const L_PER_GALLON_IMPERIAL = 4.54609; // exact
export const L_PER_GALLON_US = 231 * (M_PER_IN * 10) ** 3; // exact: 231 cubic inches, in dm3
export const RADPS_PER_RPM = (2 * Math.PI) / S_PER_MIN;
export const ZERO_CELSIUS_K = 273.15; // exact
export const OHM_PER_MOHM = 1e-3;

/** Every suffix that may stand behind the underscore of a quantity's name (style: names of quantities). */
export const unitSuffixes: readonly string[] = [
  // SI, inside sim/
  ..."s m m2 kg mps mps2 N Nm J W V A C ohm K rad radps kgpm3 kgm2 Pa KpJ A2 A2s radpm JpK WpK Npmps Npmps2 J_per_kg KpW Ns Nms Vs F kA ohmpm Wpm".split(
    " ",
  ),
  // at the edges
  ..."h min km mi mm in kmh mph Wh kWh kW PS bhp Ah degC deg rpm bar psi kPa uF mohm Whpkm perkWh perh perl perday l100km gpkWh gpkm gpl".split(
    " ",
  ),
  ..."mm2 Npkmh Npkmh2 VpC l kJpK WhpK kWhpkm Whpkg kgpkWh Jpm perK Nps ms us ns days years MB kB px percent".split(
    " ",
  ),
  // in the job's currency, where a column or a key needs to say so
  "money",
  // pure numbers
  ..."frac ratio coeff".split(" "),
];
