import { splitHeader } from "../log/columnUnits.ts";
import type { ColumnRole } from "../log/logFile.ts";

/** Words that name what a column holds, most telling first; English, German and French as loggers write them. */
const namePatterns: readonly (readonly [ColumnRole, RegExp])[] = [
  ["hdop", /\bhdop\b|dilution/],
  ["accuracy", /accura|\bh ?acc\b|genauigkeit|precision/],
  ["latHemisphere", /^(n\/?s|n s|lat(itude)? ?(dir|hem|ref|direction|hemisphere|ns).*)$/],
  ["lonHemisphere", /^(e\/?w|e w|(lon|lng|long|longitude) ?(dir|hem|ref|direction|hemisphere|ew).*)$/],
  ["lat", /^(gps |position )?(lat|latitude|breite|breitengrad)\b/],
  ["lon", /^(gps |position )?(lon|lng|long|longitude|lange|laenge|langengrad|laengengrad)\b/],
  ["motorSpeed", /\brpm\b|drehzahl|motor ?speed|engine ?speed|regime/],
  ["speed", /speed|geschw|vitesse|velocit|^v$|^(km\/?h|kmh|mph)$|\bspd\b/],
  ["height", /\balt|\bele|height|\bhohe|hoehe|hauteur/],
  ["temperature", /temp/],
  ["packVoltage", /volt|spannung|tension/],
  ["packCurrent", /current|\bamp|strom|courant|intensite/],
  ["date", /^(date|datum|day|jour|gps date|utc date|date utc)$/],
  ["time", /time|zeit|heure|uhr|^t$|epoch|unix|elapsed|^(second|sec|ms|milli)s?\b|^(utc|ts|clock|stamp|datum|date)\b/],
];

/** Headers whose words point at a role but mean something beside it. */
const notMeant: Partial<Record<ColumnRole, RegExp>> = {
  packVoltage: /12 ?v|aux|cell|\bmin\b|\bmax\b|sensor|o2|lambda|throttle|module/,
  packCurrent: /trip|limit|max|min|time|gear/,
  speed: /\bwind|\bfan\b|limit|accura|uncert|average|avg|mean|\bmax|vertical|motor|engine|wheel|gps time/,
  time: /zone|trip|since|total|run ?time|offset|lap/,
  height: /accura|uncert|altern/,
  temperature: /ambient max/,
};

const roleOfUnit: Readonly<Record<string, ColumnRole>> = {
  kmh: "speed",
  mph: "speed",
  mps: "speed",
  knots: "speed",
  V: "packVoltage",
  A: "packCurrent",
  rpm: "motorSpeed",
};

/** What a header says its column holds, with its unit; "none" where the words are not known. */
export function columnByName(header: string): { readonly role: ColumnRole | "none"; readonly unit: string } {
  const { words, unit } = splitHeader(header);
  for (const [role, pattern] of namePatterns) {
    if ((pattern.test(words) || pattern.test(header.toLowerCase().trim())) && !notMeant[role]?.test(words)) {
      return { role, unit };
    }
  }
  const byUnit = roleOfUnit[unit];
  if (byUnit && !notMeant[byUnit]?.test(words)) {
    return { role: byUnit, unit };
  }
  return { role: "none", unit };
}
