/**
 * The text of a figure for a snapshot: numbers to three decimals, generated ids and classes renamed in the order they come, one
 * element a line, so that a reviewer sees what moved.
 */
export function snapshotSvg(svg: SVGSVGElement): string {
  const names = new Map<string, string>();
  return `${svg.outerHTML
    .replace(/\bplot-[0-9a-z-]+\b/g, (id) => {
      if (!names.has(id)) names.set(id, `drawn-${names.size + 1}`);
      return names.get(id) as string;
    })
    .replace(/-?\d+\.\d{4,}(?:e-?\d+)?/g, (number) => String(Number(Number(number).toFixed(3))))
    .replace(/></g, ">\n<")}\n`;
}
