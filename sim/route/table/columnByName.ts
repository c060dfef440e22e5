import { splitHeader } from "../log/columnUnits.ts";
import type { ColumnRole } from "../log/logFile.ts";

/** Words under which a log keeps which of several cars a row is of. */
const ofVehicle =
  /^(vehicle|car|fahrzeug|vehicule|voiture|van|truck|plate|registration|kennzeichen|immatriculation|imei|vin|tracker|device|asset|unit id)( ?(id|no|nr|number|name|reg|registration))?$/;

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
  ["height", /\balt|\bele|\belv\b|height|\bhohe|hoehe|hauteur/],
  ["temperature", /(?<!s)temp(?!s\b|o\b)/], // not Zeitstempel, temps, tempo
  ["stateOfCharge", /\bsoc\b|state of charge|charge level|ladezustand|ladestand|etat de charge/],
  ["packVoltage", /volt|spannung|tension/],
  ["packCurrent", /current|\bamp|strom|courant|intensite/],
  ["date", /^(date|datum|day|jour|gps date|utc date|date utc)$/],
  [
    "time",
    /time|zeit|heure|uhr|^t$|epoch|unix|elapsed|duration|dauer|\bduree\b|\btemps\b|sekunde|\bseconde|minuten|^(second|sec|ms|milli)s?\b|^(utc|ts|clock|stamp|datum|date)\b/,
  ],
];

/** Headers whose words point at a role but mean something beside it. */
const notMeant: Partial<Record<ColumnRole, RegExp>> = {
  packVoltage: /12 ?v|aux|cell|\bmin\b|\bmax\b|sensor|o2|lambda|throttle|module|start/,
  packCurrent: /12 ?v|aux|cell|trip|limit|max|min|time|gear|module|start/,
  speed: /\bwind|\bfan\b|limit|accura|uncert|average|avg|mean|\bmax|vertical|motor|engine|wheel|gps time/,
  time: /zone|\btotal|\brun ?time|offset|\blaps?\b/,
  height: /accura|uncert|altern/,
  temperature: /ambient max/,
};

/** A car has many volts and amps; only those of its traction pack, or of nothing named, are meant. */
const ofThePack =
  /^(volt(s|age)?|spannung|tension|current|amps?|amperes?|strom(starke)?|courant|intensite|[uia]|)$|\b(pack|batt|akku|accu|hv|high voltage|hochvolt|hochspannung|traction|traktion|antrieb|main|haupt|dc|bus|link|bms|shunt)/;

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
  if (ofVehicle.test(words)) {
    return { role: "vehicle", unit: "" };
  }
  for (const [role, pattern] of namePatterns) {
    if ((pattern.test(words) || pattern.test(header.toLowerCase().trim())) && isMeant(role, words)) {
      return { role, unit };
    }
  }
  const byUnit = roleOfUnit[unit];
  if (byUnit && isMeant(byUnit, words)) {
    return { role: byUnit, unit };
  }
  return { role: "none", unit };
}

function isMeant(role: ColumnRole, words: string): boolean {
  const isElectric = role === "packVoltage" || role === "packCurrent";
  return !notMeant[role]?.test(words) && (!isElectric || ofThePack.test(words));
}
