/** Round constants: the first 32 bits of the fractional parts of the cube roots of the first 64 primes [FIPS180-4, 4.2.2]. */
const ROUND = primes(64).map((prime) => fraction32(Math.cbrt(prime)));
/** Where the hash begins: of the square roots of the first eight [FIPS180-4, 5.3.3]. */
const START = primes(8).map((prime) => fraction32(Math.sqrt(prime)));

/**
 * The SHA-256 digest of a text in UTF-8, as 64 hexadecimal digits [FIPS180-4, 6.2]. Written here, since what the platform has
 * answers later and not on every page. It tells one document from another; nothing secret hangs on it.
 */
export function sha256(text: string): string {
  const words = padded(utf8(text));
  const hash = [...START];
  const w = new Int32Array(64);
  for (let block = 0; block < words.length; block += 16) {
    for (let t = 0; t < 64; t++) {
      if (t < 16) {
        w[t] = words[block + t];
        continue;
      }
      const s0 = turned(w[t - 15], 7) ^ turned(w[t - 15], 18) ^ (w[t - 15] >>> 3);
      const s1 = turned(w[t - 2], 17) ^ turned(w[t - 2], 19) ^ (w[t - 2] >>> 10);
      w[t] = w[t - 16] + s0 + w[t - 7] + s1;
    }
    compress(hash, w);
  }
  return hash.map((word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}

function compress(hash: number[], w: Int32Array): void {
  let [a, b, c, d, e, f, g, h] = hash;
  for (let t = 0; t < 64; t++) {
    const big1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const one = (h + big1 + ((e & f) ^ (~e & g)) + ROUND[t] + w[t]) | 0;
    const big0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const two = (big0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    [h, g, f, e, d, c, b, a] = [g, f, e, (d + one) | 0, c, b, a, (one + two) | 0];
  }
  [a, b, c, d, e, f, g, h].forEach((value, i) => {
    hash[i] = (hash[i] + value) | 0;
  });
}

/** Bits of a word of 32 turned round to the right. */
function turned(word: number, count: number): number {
  return (word >>> count) | (word << (32 - count));
}

/** The message with a bit set behind it, zeros, and its length in bits, as words, the high byte first [FIPS180-4, 5.1.1]. */
function padded(bytes: readonly number[]): Int32Array {
  const words = new Int32Array(16 * Math.ceil((bytes.length + 9) / 64));
  const put = (byte: number, i: number) => {
    words[i >> 2] |= byte << (24 - 8 * (i % 4));
  };
  bytes.forEach(put);
  put(0x80, bytes.length);
  words[words.length - 2] = Math.floor(bytes.length / 2 ** 29);
  words[words.length - 1] = bytes.length << 3;
  return words;
}

/** A text as bytes [WHATWGEncoding, 9.1]; half of a pair of surrogates, which is no letter, as the sign for what cannot be read. */
function utf8(text: string): number[] {
  const bytes: number[] = [];
  for (const letter of text) {
    const found = letter.codePointAt(0) ?? 0;
    const code = found >= 0xd800 && found <= 0xdfff ? 0xfffd : found;
    if (code < 0x80) bytes.push(code);
    else {
      const more = code < 0x800 ? 1 : code < 0x10000 ? 2 : 3;
      bytes.push(((0xff00 >> (more + 1)) & 0xff) | (code >> (6 * more)));
      for (let k = more - 1; k >= 0; k--) bytes.push(0x80 | ((code >> (6 * k)) & 0x3f));
    }
  }
  return bytes;
}

function primes(count: number): number[] {
  const found: number[] = [];
  for (let n = 2; found.length < count; n++) if (found.every((prime) => n % prime > 0)) found.push(n);
  return found;
}

function fraction32(root: number): number {
  return Math.floor((root % 1) * 2 ** 32) | 0;
}
