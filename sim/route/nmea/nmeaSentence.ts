/** A sound sentence of a kind that is read, and its fields as written; the first field is the sentence's name. */
export interface Sentence {
  readonly type: SentenceType;
  readonly fields: readonly string[];
  readonly hasChecksum: boolean;
}

export type SentenceType = "RMC" | "GGA" | "VTG" | "GNS" | "ZDA";

/** Why a sentence cannot be used. */
interface BrokenSentence {
  readonly fault: "brokenSentence" | "badChecksum";
  readonly message: string;
}

const sentencePattern = /\$[A-Z]{2}(RMC|GGA|VTG|GNS|ZDA),[^$*\r\n]*(\*[0-9A-Fa-f]{2})?/g;

/** Fields whose form is fixed, by their place; what they hold may be left empty before the receiver's lock. */
const formOf: Readonly<Record<SentenceType, readonly (readonly [field: number, form: RegExp])[]>> = {
  RMC: [
    [2, /^[AV]?$/],
    [4, /^[NS]?$/],
    [6, /^[EW]?$/],
  ],
  GGA: [
    [3, /^[NS]?$/],
    [5, /^[EW]?$/],
    [6, /^\d?$/],
  ],
  GNS: [
    [3, /^[NS]?$/],
    [5, /^[EW]?$/],
    [6, /^[A-Z]*$/],
  ],
  VTG: [],
  ZDA: [],
};

/**
 * The sentences of the five kinds read that stand anywhere in a line, sound or broken [NMEA0183, sentence formats]. The
 * checksum is the exclusive-or of all characters between $ and *; a sentence without one is taken as it stands.
 */
export function* sentencesOf(line: string): Generator<Sentence | BrokenSentence> {
  let found = 0;
  for (const match of line.matchAll(sentencePattern)) {
    found++;
    yield sentenceOf(match[0], match[1] as SentenceType, match[2] !== undefined);
  }
  if (found === 0 && /[A-Z]{2}(?:RMC|GGA|GNS|VTG|ZDA),/.test(line)) {
    yield broken("found part of a sentence, wanted one from $ to the checksum");
  }
}

function sentenceOf(text: string, type: SentenceType, hasChecksum: boolean): Sentence | BrokenSentence {
  if (!hasChecksum && (!text.includes(",", 7) || text.length < 12)) {
    return broken("found a sentence cut short, wanted one up to its checksum");
  }
  const end = hasChecksum ? text.lastIndexOf("*") : text.length;
  const fields = text.slice(0, end).trimEnd().split(",");
  if (formOf[type].some(([field, form]) => !form.test(fields[field] ?? ""))) {
    return broken(`found a ${type} sentence with fields out of form`);
  }
  const [stated, wanted] = [text.slice(end + 1).toUpperCase(), checksum(text.slice(0, end))];
  if (hasChecksum && stated !== wanted) {
    const message = `found a ${type} sentence changed on its way: its checksum is ${stated}, its text gives ${wanted}`;
    return { fault: "badChecksum", message };
  }
  return { type, fields, hasChecksum };
}

function broken(message: string): BrokenSentence {
  return { fault: "brokenSentence", message };
}

function checksum(sentence: string): string {
  let sum = 0;
  for (let i = 1; i < sentence.length; i++) {
    sum ^= sentence.charCodeAt(i);
  }
  return (sum & 0xff).toString(16).toUpperCase().padStart(2, "0");
}
