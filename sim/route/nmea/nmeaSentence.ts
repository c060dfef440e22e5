import GPS from "gps";

/** What the parser makes of a sound sentence, and its fields as written. */
export interface Sentence {
  readonly parsed: Exclude<ReturnType<typeof GPS.Parse>, false>;
  readonly fields: readonly string[];
  readonly hasChecksum: boolean;
}

/** Why a sentence cannot be used. */
interface BrokenSentence {
  readonly fault: "brokenSentence" | "badChecksum";
  readonly message: string;
}

const sentencePattern = /\$[A-Z]{2}(RMC|GGA|VTG|GNS|ZDA),[^$*\r\n]*(\*[0-9A-Fa-f]{2})?/g;

/**
 * The sentences of the five kinds read that stand anywhere in a line, sound or broken [NMEA0183, sentence formats]. The
 * checksum is the exclusive-or of all characters between $ and *; a sentence without one is taken as it stands.
 */
export function* sentencesOf(line: string): Generator<Sentence | BrokenSentence> {
  let found = 0;
  for (const match of line.matchAll(sentencePattern)) {
    found++;
    yield sentenceOf(match[0], match[1], match[2] !== undefined);
  }
  if (found === 0 && /[A-Z]{2}(?:RMC|GGA|GNS|VTG|ZDA),/.test(line)) {
    yield broken("found part of a sentence, wanted one from $ to the checksum");
  }
}

function sentenceOf(text: string, type: string, hasChecksum: boolean): Sentence | BrokenSentence {
  if (!hasChecksum && (!text.includes(",", 7) || text.length < 12)) {
    return broken("found a sentence cut short, wanted one up to its checksum");
  }
  const full = hasChecksum ? text : `${text.trimEnd()}*${checksum(text.trimEnd())}`;
  const parsed = parse(full);
  if (parsed === false) {
    return broken(`found a ${type} sentence with fields out of form`);
  }
  if (!parsed.valid) {
    const wanted = checksum(full.slice(0, full.lastIndexOf("*")));
    return {
      fault: "badChecksum",
      message: `found a ${type} sentence changed on its way: its checksum is ${full.slice(-2)}, its text gives ${wanted}`,
    };
  }
  return { parsed, fields: full.split(","), hasChecksum };
}

function broken(message: string): BrokenSentence {
  return { fault: "brokenSentence", message };
}

/** The parser throws where a letter field is out of form; to us that is one broken sentence. */
function parse(sentence: string): ReturnType<typeof GPS.Parse> {
  try {
    return GPS.Parse(sentence);
  } catch {
    return false;
  }
}

function checksum(sentence: string): string {
  let sum = 0;
  for (let i = 1; i < sentence.length; i++) {
    sum ^= sentence.charCodeAt(i);
  }
  return (sum & 0xff).toString(16).toUpperCase().padStart(2, "0");
}
