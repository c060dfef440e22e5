/** A page that is not looked at paints no frame, and goes on after this. */
const UNSEEN_ms = 100;

/** Calls once a frame is on its way, before it is laid out, or soon where none comes. */
export function beforeFrame(run: () => void): void {
  const once = () => {
    clearTimeout(unseen);
    cancelAnimationFrame(frame);
    run();
  };
  const unseen = setTimeout(once, UNSEEN_ms);
  const frame = requestAnimationFrame(once);
}

/** Is over once what the page shows now has been laid out and painted. */
export function afterFrame(): Promise<void> {
  return new Promise((resolve) => beforeFrame(() => setTimeout(resolve)));
}
