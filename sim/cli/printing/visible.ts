/**
 * C0 and C1 controls (a terminal obeys them: colours, titles, moves of the cursor), the delete character, and the marks that turn
 * the direction of writing, with which a name can pose as another (Unicode, control codes and bidirectional algorithm).
 */
const CONTROLS = /(?![\t\n])[\p{Cc}\p{Bidi_Control}]/gu;
const CONTROL_PICTURES = 0x2400; // the block of pictures of the C0 controls

/** Text as it may go to a terminal: control characters become pictures of themselves; line ends and tabs stay. */
export function visible(text: string): string {
  return text.replace(CONTROLS, pictureOf);
}

/** The same for what is one line, such as a name or a message: line ends and tabs become pictures too. */
export function visibleLine(text: string): string {
  return visible(text).replace(/[\t\n]/g, pictureOf);
}

/** The same as JSON, in which each control character has an escape that a program reads back. */
export function visibleJson(json: string): string {
  return json.replace(CONTROLS, (sign) => `\\u${codeOf(sign)}`);
}

function pictureOf(sign: string): string {
  const code = sign.charCodeAt(0);
  return code < 0x20 ? String.fromCharCode(CONTROL_PICTURES + code) : code === 0x7f ? "\u2421" : `<${codeOf(sign)}>`;
}

function codeOf(sign: string): string {
  return sign.charCodeAt(0).toString(16).padStart(4, "0");
}
