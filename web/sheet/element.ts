/** What an element is made of: nothing, text, or elements. */
export type Child = Node | string | undefined;

/** Makes elements in one document, a browser's or another; text is always text, whatever is typed into a job. */
export type Make = (name: string, className: string, ...children: readonly Child[]) => HTMLElement;

/** The maker of a document. */
export function makerOf(document: Document): Make {
  return (name, className, ...children) => {
    const element = document.createElement(name);
    if (className !== "") element.setAttribute("class", className);
    for (const child of children) {
      if (child !== undefined) element.append(typeof child === "string" ? document.createTextNode(child) : child);
    }
    return element;
  };
}

/** A table with its head and rows; columns from `numbersFrom` on are set flush right, but for the last. */
export function tableOf(
  make: Make,
  head: readonly string[],
  rows: readonly { readonly cells: readonly string[]; readonly isChosen?: boolean }[],
  className = "",
): HTMLElement {
  const cell = (name: string) => (text: string, i: number) =>
    make(name, i === 0 || i === head.length - 1 ? "is-text" : "is-number", text);
  return make(
    "table",
    className,
    make("thead", "", make("tr", "", ...head.map(cell("th")))),
    make(
      "tbody",
      "",
      ...rows.map(({ cells, isChosen }) =>
        make("tr", isChosen ? "is-chosen" : "", ...cells.map((text, i) => cell(i === 0 ? "th" : "td")(text, i))),
      ),
    ),
  );
}

/** Terms and what is said of each, those with nothing to say left out. */
export function factsOf(make: Make, facts: readonly (readonly [string, string | undefined])[]): HTMLElement {
  return make(
    "dl",
    "facts",
    ...facts.flatMap(([term, text]) =>
      text === undefined || text === "" ? [] : [make("dt", "", term), make("dd", "", text)],
    ),
  );
}
