/**
 * The cells of a pasted text that is a table, row by row; undefined for a text that is a single cell. A spreadsheet parts
 * cells by tabs; a text of several lines without any by semicolons, or by commas that stand for no decimal point.
 */
export function pastedRows(text: string): string[][] | undefined {
  const lines = text.replace(/\r\n?/g, "\n").replace(/\n+$/, "").split("\n");
  const mark = ["\t", ";", ","].find((each) => lines.some((line) => line.includes(each)));
  const isTable = mark === "\t" || (mark !== undefined && lines.length > 1);
  if (!isTable || mark === undefined) return lines.length > 1 ? lines.map((line) => [line.trim()]) : undefined;
  return lines.map((line) => line.split(mark).map((cell) => cell.trim().replace(/^"(.*)"$/, "$1")));
}

/** The unit that the head of a pasted column names in brackets, `Torque (lb ft)`; nothing where it names none. */
export function unitOfHead(head: string): string | undefined {
  return /[([]\s*([^()[\]]+?)\s*[)\]]\s*$/.exec(head)?.[1];
}

/**
 * For each pasted column its place among the table's, and whether the first row is a header: it is one where at least half of
 * its cells are heads of the table (or begin one). Without a header columns go in order from the one pasted into.
 */
export function columnsOf(
  [first = []]: readonly (readonly string[])[],
  heads: readonly string[],
  from: number,
): { readonly places: readonly (number | undefined)[]; readonly hasHeader: boolean } {
  const plain = (text: string) => text.toLowerCase().replace(/[^a-z0-9]/g, "");
  const named = first.map((cell) => {
    const word = plain(cell);
    const at =
      word.length < 3 ? -1 : heads.findIndex((head) => plain(head).startsWith(word) || word.startsWith(plain(head)));
    return at < 0 ? undefined : at;
  });
  const hasHeader =
    named.filter((at) => at !== undefined).length * 2 >= first.length && named.some((at) => at !== undefined);
  if (hasHeader) return { places: named, hasHeader };
  return { places: first.map((_, i) => (from + i < heads.length ? from + i : undefined)), hasHeader };
}
