import { type DecimalSign, readNumber } from "./readNumber.ts";

/** How a table writes latitude and longitude. */
export type AngleForm = "degrees" | "degreesMinutes";

/** An angle as written: the sign belongs to it only where `isSigned` (a minus or a hemisphere's letter was there). */
interface Angle {
  readonly value_deg: number;
  readonly isSigned: boolean;
}

const partsPattern =
  /^([+-]?\d{1,3})\s*[°ºd:\s]\s*(\d{1,2}(?:[.,]\d+)?)\s*(?:['’′m:\s]\s*(?:(\d{1,2}(?:[.,]\d+)?)\s*(?:["”″s]|'')?)?)?$/i;

/**
 * An angle in degrees from `52.1234`, `52.1234 N`, `N 52° 07.405'`, `52°07'24.3"N` or, in the form `degreesMinutes`,
 * `5207.405` (the last two digits before the point are minutes). Undefined where the text is none of these or out of
 * the range given. South and west are negative.
 */
export function readAngle(text: string, form: AngleForm, decimal: DecimalSign, limit_deg: number): Angle | undefined {
  const trimmed = text.trim().replace(/^[\u2212-]\s*/, "-"); // a minus as printers have it, or apart from its number
  if (trimmed === "") {
    return undefined;
  }
  const letter = /^([NSEW])|([NSEW])$/i.exec(trimmed)?.[0]?.toUpperCase();
  const bare = letter === undefined ? trimmed : trimmed.replace(/^[NSEW]\s*|\s*[NSEW]$/gi, "");
  const size_deg = size(bare, form, decimal);
  if (size_deg === undefined || Math.abs(size_deg) > limit_deg) {
    return undefined;
  }
  const isMinus = letter === "S" || letter === "W";
  const value_deg = isMinus ? -Math.abs(size_deg) : size_deg;
  return { value_deg, isSigned: letter !== undefined || bare.startsWith("-") };
}

function size(bare: string, form: AngleForm, decimal: DecimalSign): number | undefined {
  const parts = partsPattern.exec(bare);
  if (parts) {
    const degrees = Math.abs(Number(parts[1]));
    const minutes = Number((parts[2] ?? "").replace(",", "."));
    const seconds = Number((parts[3] ?? "0").replace(",", "."));
    if (minutes >= 60 || seconds >= 60) {
      return undefined;
    }
    const total_deg = degrees + minutes / 60 + seconds / 3600;
    return bare.startsWith("-") ? -total_deg : total_deg;
  }
  const number = readNumber(bare.replace(/[°º]\s*$/, ""), decimal);
  if (Number.isNaN(number)) {
    return undefined;
  }
  if (form === "degrees") {
    return number;
  }
  const whole = Math.trunc(Math.abs(number) / 100);
  const minutes = Math.abs(number) - 100 * whole;
  if (minutes >= 60) {
    return undefined;
  }
  return Math.sign(number) * (whole + minutes / 60);
}
