/**
 * Makes a drawing one picture with a name, for every chart alike: role img and the sentence on the svg, and no
 * `aria-label` on the groups inside, which have no role that could carry one (axe: aria-prohibited-attr).
 */
export function nameFigure(svg: SVGSVGElement, sentence: string): void {
  for (const part of svg.querySelectorAll("[aria-label],[aria-describedby],[aria-description],[role]")) {
    for (const name of ["aria-label", "aria-describedby", "aria-description", "role"]) part.removeAttribute(name);
  }
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", sentence);
}
