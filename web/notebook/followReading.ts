/** Tells which section is being read: the last whose heading has passed the upper third of the window. */
export function followReading(page: HTMLElement, tell: (name: string) => void): void {
  const sections = [...page.querySelectorAll<HTMLElement>("section")];
  const look = () => {
    const passed = sections.filter((each) => each.getBoundingClientRect().top < innerHeight / 3);
    const atEnd = scrollY + innerHeight >= document.documentElement.scrollHeight - 2;
    tell((atEnd ? sections.at(-1) : passed.at(-1))?.id ?? sections[0]?.id ?? "");
  };
  let isComing = false;
  addEventListener(
    "scroll",
    () => {
      if (isComing) return;
      isComing = true;
      requestAnimationFrame(() => {
        isComing = false;
        look();
      });
    },
    { passive: true },
  );
  look();
}
