/** A number at the start of a text, and what follows it. */
export interface NumberRead {
  readonly value: number;
  /** The same digits with the comma as a decimal comma, where they can be read that way too. */
  readonly decimalComma?: number;
  /** Said to the person: how a comma was read. */
  readonly note?: string;
  readonly rest: string;
}

const sign = "[+-]?";
const mixed = new RegExp(`^(${sign})\\s*(\\d+)(?: ?[ -] ?)(\\d+) ?/ ?(\\d+)(?![\\d.,])`);
const fraction = new RegExp(`^(${sign})\\s*(\\d+) ?/ ?(\\d+)(?![\\d.,])`);
const grouped = new RegExp(`^(${sign})\\s*(\\d{1,3}(?:[ '](?:\\d{3}))+)(?:[.,](\\d+))?(?![\\d/])`);
const plain = new RegExp(`^(${sign})\\s*(\\d[\\d.,]*|\\.\\d+)(?:e([+-]?\\d{1,3})(?![\\d]))?`, "i");

/**
 * The number a tidied text begins with; undefined where it begins with none or with one that cannot be told: `1,48,0`,
 * `14 9/4`, `1/0`.
 *
 * A comma with one, two or more than three digits behind it can only be a decimal comma, and so can one behind a
 * leading nought (`0,480`) or behind points that stand for thousands (`1.480,5`). A comma before exactly three digits is read as a mark of
 * thousands and the other reading is given in `decimalComma`, for the caller to judge by what is possible.
 */
export function readNumber(text: string): NumberRead | undefined {
  const spelt = /^minus\s+(?=[\d.])/i.exec(text);
  return readDigits(spelt ? `-${text.slice(spelt[0].length)}` : text);
}

function readDigits(text: string): NumberRead | undefined {
  const whole = mixed.exec(text);
  if (whole) {
    const [all, minus, units, over, under] = whole;
    const part = Number(over) / Number(under);
    return part < 1 ? finite(minus, Number(units) + part, text.slice(all.length)) : undefined;
  }
  const parts = fraction.exec(text);
  if (parts) return finite(parts[1], Number(parts[2]) / Number(parts[3]), text.slice(parts[0].length));
  const groups = grouped.exec(text);
  if (groups) {
    const value = Number(`${(groups[2] ?? "").replace(/[ ']/g, "")}.${groups[3] ?? "0"}`);
    return finite(groups[1], value, text.slice(groups[0].length));
  }
  const found = plain.exec(text);
  if (!found) return undefined;
  const digits = (found[2] ?? "").replace(/[.,]$/, "");
  const marks = readMarks(digits);
  if (!marks) return undefined;
  const scale = (found[1] === "-" ? -1 : 1) * 10 ** Number(found[3] ?? 0);
  const value = marks.value * scale;
  if (!Number.isFinite(value)) return undefined;
  const rest = text.slice(found[0].length);
  return {
    ...marks,
    value,
    ...(marks.decimalComma === undefined ? {} : { decimalComma: marks.decimalComma * scale }),
    rest,
  };
}

/** Points and commas within a run of digits. */
function readMarks(digits: string): Omit<NumberRead, "rest"> | undefined {
  const commas = digits.split(",").length - 1;
  const points = digits.split(".").length - 1;
  if (commas === 0 && points <= 1) return { value: Number(digits) };
  if (commas === 0)
    return /^\d{1,3}(\.\d{3})+$/.test(digits) ? { value: Number(digits.replaceAll(".", "")) } : undefined;
  if (/^[1-9]\d{0,2}(,\d{3})+\.\d+$/.test(digits)) return { value: Number(digits.replaceAll(",", "")) };
  if (/^[1-9]\d{0,2}(,\d{3}){2,}$/.test(digits)) return { value: Number(digits.replaceAll(",", "")) };
  if (/^[1-9]\d{0,2}(\.\d{3})+,\d+$/.test(digits)) return decimal(digits.replaceAll(".", ""));
  if (commas > 1 || points > 0) return undefined;
  if (!/^[1-9]\d{0,2},\d{3}$/.test(digits)) return decimal(digits);
  return { value: Number(digits.replace(",", "")), decimalComma: Number(digits.replace(",", ".")) };
}

function decimal(digits: string): Omit<NumberRead, "rest"> | undefined {
  const value = Number(digits.replace(",", "."));
  return Number.isFinite(value) ? { value, note: "comma read as the decimal point" } : undefined;
}

function finite(minus: string | undefined, size: number, rest: string): NumberRead | undefined {
  return Number.isFinite(size) ? { value: minus === "-" ? -size : size, rest } : undefined;
}
