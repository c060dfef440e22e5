/**
 * The same words in plain characters: no-break and thin spaces become spaces, vulgar fractions become ` 1/4`, the
 * multiplication sign becomes `x`, every dash and minus a hyphen, a raised decimal point a full stop, primes and curled
 * quotes straight ones, runs of space one space. Letters keep their case.
 */
export function tidyText(text: string): string {
  return text
    .replace(/(\d)\s*([¹²³⁰⁴-⁹])/g, "$1^$2") // a power, not another digit
    .replace(/[\u00bc-\u00be\u2150-\u215e\u2189]/g, (fraction) => ` ${fraction.normalize("NFKD")}`)
    .normalize("NFKC")
    .replace(/[×✕✖⨯]/g, "x")
    .replace(/[−–—‒‐‑]/g, "-")
    .replace(/[⁄∕÷]/g, "/")
    .replace(/[∶]/g, ":")
    .replace(/[·⋅∙•]/g, ".")
    .replace(/[’‘′`´]/g, "'")
    .replace(/''|[“”″]/g, '"')
    .replace(/\+\s*\/?\s*-/g, "±")
    .replace(/[\s\u200b\ufeff]+/g, " ")
    .trim();
}

/**
 * A unit's spelling without what people leave out or put in: `lbf·ft`, `lbf-ft` and `lbf ft` are all `lbfft`, `°C` is
 * `degc`, `Ω` is `ohm`. Letter case is dropped, save that mega stays apart from milli before an ohm.
 */
export function tidyUnit(unit: string): string {
  return tidyText(unit)
    .replace(/^M(?=\s*[Ωω]|\s*ohm)/, "mega")
    .replace(/[Ωω]/g, "ohm")
    .replace(/μ/g, "u")
    .replace(/°/g, "deg")
    .toLowerCase()
    .replace(/\bper\b/g, "/")
    .replace(/[\s.^*_()-]/g, "");
}
