// Widths of letters in hundredths of the font size, those of the page's text face (Source Serif 4, regular), rounded up.
const widths: readonly (readonly [number, RegExp])[] = [
  [24, /[ ']/],
  [30, /[!,.:;j|]/],
  [36, /[-()/[\]ilt{}°]/],
  [42, /["?IJ`f²]/],
  [48, /[*rs]/],
  [66, /[BCEFLPTbdhnpu]/],
  [72, /[AGKRVXY]/],
  [78, /[&DNOQU]/],
  [102, /[@HwW…%Mm]/],
];
const common = 60; // digits and whatever is not listed

/**
 * Width a text takes, in pixels, from a table and not from a canvas, so that a chart comes out the same in Node and on the
 * page. Five in a hundred are added, for the page's fall-back faces run wider.
 */
export function textWidth_px(text: string, fontSize_px: number): number {
  let hundredths = 0;
  for (const letter of text) hundredths += widths.find(([, letters]) => letters.test(letter))?.[0] ?? common;
  return (hundredths * 1.05 * fontSize_px) / 100;
}

/** `text` broken at its spaces into at most `lines` lines of `space_px`; what does not fit ends in an ellipsis. */
export function wrapped(text: string, space_px: number, fontSize_px: number, lines: number): string[] {
  const out: string[] = [];
  let line = "";
  const words = text.split(/\s+/);
  for (let i = 0; i < words.length; i++) {
    const longer = line ? `${line} ${words[i]}` : (words[i] ?? "");
    if (!line || textWidth_px(longer, fontSize_px) <= space_px) {
      line = longer;
    } else if (out.length === lines - 1) {
      line = `${line} ${words.slice(i).join(" ")}`;
      break;
    } else {
      out.push(line);
      line = words[i] ?? "";
    }
  }
  out.push(line);
  return out.map((each) => shortened(each, space_px, fontSize_px));
}

function shortened(text: string, space_px: number, fontSize_px: number): string {
  if (textWidth_px(text, fontSize_px) <= space_px) return text;
  let kept = text;
  while (kept.length > 1 && textWidth_px(`${kept}…`, fontSize_px) > space_px) kept = kept.slice(0, -1);
  return `${kept.trimEnd()}…`;
}
