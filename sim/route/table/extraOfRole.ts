import type { ExtraName } from "../log/fixes.ts";
import type { ColumnRole } from "../log/logFile.ts";

/** Where a fix keeps what a column of the role holds, for the roles that are no part of the drive itself. */
export const extraOfRole: Readonly<Partial<Record<ColumnRole, ExtraName>>> = {
  packVoltage: "packVoltage_V",
  packCurrent: "packCurrent_A",
  motorSpeed: "motorSpeed_radps",
  temperature: "temperature_K",
  stateOfCharge: "soc_frac",
};
