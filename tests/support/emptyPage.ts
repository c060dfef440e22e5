import { afterAll, vi } from "vitest";

// A worker has one document, since lit-html keeps the one that it first found. Each file begins on an empty page of it.
document.body.innerHTML = "<main></main>";
localStorage.clear();
afterAll(() => void vi.unstubAllGlobals());

// Nothing is laid out here: nothing changes its size or is scrolled to, and all is seen that no attribute hides.
class ResizeObserver {
  observe() {}
}
Object.assign(globalThis, { ResizeObserver, scrollTo: () => {} });
HTMLElement.prototype.scrollIntoView = () => {};
HTMLElement.prototype.checkVisibility = function (this: HTMLElement) {
  return this.closest("[hidden]") === null;
};
