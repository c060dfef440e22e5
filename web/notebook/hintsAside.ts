/**
 * Keeps the hint of the field that is written in out of the way: Escape closes it, and so does pointing at what it lies over, until the
 * pointer is elsewhere again. (A click goes through it to what is below: see `.hint` in look/fields.css.)
 */
export function hintsAside(page: HTMLElement): void {
  const closed = new WeakSet<Element>();
  const hintOf = (field: Element | null | undefined) =>
    field?.closest(".field")?.querySelector<HTMLElement>(":scope > .hint");
  const hintNow = () => hintOf(document.activeElement);
  page.addEventListener("keydown", (event) => {
    if (event.key !== "Escape") return;
    const hint = hintNow();
    hint?.toggleAttribute("data-aside", true);
    if (hint) closed.add(hint);
  });
  page.addEventListener("focusout", ({ target }) => {
    const hint = target instanceof Element ? hintOf(target) : undefined;
    hint?.removeAttribute("data-aside");
    if (hint) closed.delete(hint);
  });
  let place: { readonly hint: HTMLElement; readonly box: DOMRect } | undefined;
  page.addEventListener("pointermove", ({ clientX, clientY, pointerType }) => {
    const hint = hintNow();
    if (!hint || closed.has(hint) || pointerType === "touch") return;
    if (!hint.hasAttribute("data-aside")) place = { hint, box: hint.getBoundingClientRect() };
    if (place?.hint !== hint) return;
    const { left, right, top, bottom } = place.box;
    const isOver = clientX >= left && clientX <= right && clientY >= top && clientY <= bottom;
    hint.toggleAttribute("data-aside", isOver);
  });
}
