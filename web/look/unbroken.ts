import { quantityKinds } from "../../shared/quantity/kinds/kinds.ts";
import { readersUnits } from "../../shared/quantity/writeQuantity.ts";

const furtherSigns = [...readersUnits, "minutes", "seconds", "hours", "days", "%"];
// Longer signs first, so that km/h is not read as km; examples such as `1 in 7` among the spellings are no signs.
const signs = [...Object.values(quantityKinds).flatMap(({ unit, spellings }) => [unit, ...spellings]), ...furtherSigns]
  .filter((sign) => /^[^\d:]+/.test(sign) && !/^\d|^rise/.test(sign))
  .sort((a, b) => b.length - a.length)
  .map((sign) => sign.replace(/[\\^$.*+?()[\]{}|/]/g, "\\$&"));
const sign = [...new Set(signs)].join("|");
const quantity = new RegExp(`\\b1 in \\d|(?:± )?\\d[\\d.,]*(?: \\d+/\\d+)? (?:${sign})(?![\\w/²])`, "gu");

/**
 * A text for the page whose numbers stay on one line with their units: 38 km, 2.5 %, 18 3/4 cwt, 1 in 6. For the places
 * where text is put into the page; what is kept, compared or saved has plain spaces.
 */
export function unbroken(text: string): string {
  return text.replace(quantity, (found) => found.replaceAll(" ", "\u00a0"));
}
