import { inputError } from "../../../shared/problems.ts";

/** Torques with commas between them, in Nm, from `low_Nm` to 10000, as an option has them. Throws InputError. */
export function readTorques_Nm(typed: string, option: string, low_Nm: number): number[] {
  return typed.split(",").map((text) => {
    const value = text.trim() === "" ? Number.NaN : Number(text);
    if (value >= low_Nm && value <= 10_000) return value;
    const found = text.trim() || "nothing";
    throw inputError(
      "option-value",
      option,
      `found ${found}, torques of ${low_Nm} to 10000 Nm with commas between them wanted`,
    );
  });
}
