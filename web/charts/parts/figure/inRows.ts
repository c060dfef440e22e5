/** Height of a row of a key. */
export const ROW_PX = 18;

/** Places of things of these widths side by side, broken into rows of `space_px`; the first starts at `first_px`. */
export function inRows(
  widths: readonly number[],
  space_px: number,
  first_px = 0,
): { readonly places: readonly { readonly x: number; readonly row: number }[]; readonly rows: number } {
  let x = first_px;
  let row = 0;
  const places = widths.map((width) => {
    if (x + width > space_px && x > 0) {
      x = 0;
      row++;
    }
    const place = { x, row };
    x += width;
    return place;
  });
  return { places, rows: widths.length === 0 ? 0 : row + 1 };
}
