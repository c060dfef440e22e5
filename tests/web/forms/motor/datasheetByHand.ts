/** What somebody types of an invented datasheet. */
export const figures = {
  peakTorque_Nm: "120",
  peakPower_kW: "38",
  continuousPower_kW: "16",
  topSpeed_rpm: "8000",
  rated_V: "108",
};
/** A point of efficiency in a row of its table. */
export const point = (row: number, speed: string, torque: string, efficiency: string) => ({
  [`points.${row}.speed_rpm`]: speed,
  [`points.${row}.torque_Nm`]: torque,
  [`points.${row}.efficiency_frac`]: efficiency,
});
