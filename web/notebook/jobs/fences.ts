/** Closes what a person gives on the page, and opens it again. */
export interface Fences {
  close(): void;
  open(): void;
}

/** Fields are closed by a fieldset around their place, which leaves their own open and closed as it is. */
export function fences(page: HTMLElement, places: string): Fences {
  const closed = new Map<HTMLElement, HTMLFieldSetElement>();
  return {
    close() {
      for (const place of page.querySelectorAll<HTMLElement>(places)) {
        if (closed.has(place)) continue;
        const around = document.createElement("fieldset");
        around.className = "only-looked";
        around.disabled = true;
        place.replaceWith(around);
        around.append(place);
        closed.set(place, around);
      }
    },
    open() {
      for (const [place, around] of closed) around.replaceWith(place);
      closed.clear();
    },
  };
}
