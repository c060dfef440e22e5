/** What drawings need of the look: the same values as tokens.css, which says why. */
export const face = '"Handbook", "Source Serif 4", Charter, "Bitstream Charter", Georgia, serif';

export const paper = "#fffdf8";
export const ink = "#22201c";
export const inkSoft = "#55504a";
export const rule = "#cfc7b6";
export const heed = "#8a3b12";
/** The one highlight: the chosen pack, the piece that is spoken of. */
export const accent = "#0f5a6b";
export const tint = "#efeae0";
export const dayWinter = "#1b2f52";
export const dayOther = "#6896b7";
export const pinned = "#958d7e";

/** The one highlight of a figure: the chosen pack, the option in use, the part that is spoken of. */
export const highlight = "#0f5a6b";

/** Everything beside the highlight, in order of use: lightness L* 38, 46, 55, told apart by dash and mark as well. */
export const greys: readonly string[] = ["#5d5850", "#726b60", "#8a8274"];
