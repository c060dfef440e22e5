import { JSDOM } from "jsdom";
import { afterEach, expect, it, vi } from "vitest";
import { browserPlatform, sentPlatform } from "../../../web/store/browserPlatform.ts";

afterEach(() => vi.unstubAllGlobals());

interface Browser {
  readonly navigator?: object;
  readonly picker?: (options: { suggestedName: string }) => Promise<unknown>;
}

/** A page in a browser that has what is given and nothing else of what may be missing. */
function inBrowser({ navigator = {}, picker }: Browser = {}) {
  const { window } = new JSDOM("<!doctype html><body></body>");
  let visibility = "visible";
  Object.defineProperty(window.document, "visibilityState", { get: () => visibility });
  if (picker) Object.assign(window, { showSaveFilePicker: picker });
  vi.stubGlobal("window", window);
  vi.stubGlobal("document", window.document);
  vi.stubGlobal("navigator", navigator);
  vi.stubGlobal("BroadcastChannel", undefined);
  const show = (state: "visible" | "hidden") => {
    visibility = state;
    window.document.dispatchEvent(new window.Event("visibilitychange"));
  };
  const send = (kind: string) => window.dispatchEvent(new window.Event(kind, { cancelable: true }));
  return { window, show, send };
}

it("hears that the page may be about to go when it is hidden or left, until it is told to stop", () => {
  const { show, send } = inBrowser();
  const heard = vi.fn();
  const stop = browserPlatform().onHidden(heard);
  show("hidden");
  show("visible");
  send("pagehide");
  expect(heard).toHaveBeenCalledTimes(2);
  stop();
  show("hidden");
  send("pagehide");
  expect(heard).toHaveBeenCalledTimes(2);
});

it("has the person asked before the page closes only where something is at risk", () => {
  const { send } = inBrowser();
  let isAtRisk = false;
  browserPlatform().onClosing(() => isAtRisk);
  expect(send("beforeunload")).toBe(true); // not prevented
  isAtRisk = true;
  expect(send("beforeunload")).toBe(false);
});

it("knows the pages that live by their locks, and says that it cannot tell where a browser has none", async () => {
  inBrowser();
  expect(await browserPlatform().liveSessions()).toBeUndefined();
  const names: string[] = [];
  const request = (name: string) => {
    names.push(name);
    return new Promise(() => {});
  };
  const query = async () => ({ held: [...names, "the lock of somebody else"].map((name) => ({ name })) });
  inBrowser({ navigator: { locks: { request, query } } });
  const world = browserPlatform();
  world.holdSession("s1");
  world.holdSession("s2");
  expect(await world.liveSessions()).toEqual(new Set(["s1", "s2"]));
});

it("links to a file only where the browser can, and takes a person's no for none chosen", async () => {
  inBrowser();
  expect(browserPlatform().chooseFile).toBeUndefined();
  const answers = [
    async () => "a handle",
    async () => Promise.reject(new DOMException("closed", "AbortError")),
    async () => Promise.reject(new DOMException("no", "SecurityError")),
  ];
  const asked: string[] = [];
  inBrowser({
    picker: async ({ suggestedName }) => {
      asked.push(suggestedName);
      return answers[asked.length - 1]?.();
    },
  });
  const world = browserPlatform();
  expect(await world.chooseFile?.("a.json")).toBe("a handle");
  expect(await world.chooseFile?.("b.json")).toBeUndefined();
  await expect(world.chooseFile?.("c.json")).rejects.toThrow("no");
  expect(asked).toEqual(["a.json", "b.json", "c.json"]);
});

it("says of the room what the browser tells, in megabytes, and nothing where it refuses", async () => {
  const storage = { persisted: async () => false, estimate: async () => ({ usage: 2_500_000, quota: 1e9 }) };
  inBrowser({ navigator: { storage } });
  expect(await browserPlatform().room()).toEqual({ isKept: false, used_MB: 2.5, room_MB: 1000 });
  const no = async () => Promise.reject(new Error("a private window"));
  inBrowser({ navigator: { storage: { persisted: no, estimate: no } } });
  expect(await browserPlatform().room()).toEqual({});
});

it("keeps nothing of a page that was sent with its job inside", async () => {
  const request = vi.fn(async () => {});
  const persist = vi.fn(async () => true);
  const { send } = inBrowser({
    navigator: { locks: { request }, storage: { persist } },
    picker: async () => "a handle",
  });
  const world = sentPlatform();
  expect((await world.openStore()).kind).toBe("memory");
  expect(world.chooseFile).toBeUndefined();
  world.holdSession("s1");
  world.onClosing(() => true);
  expect(send("beforeunload")).toBe(true);
  expect(await world.askToKeep()).toBeUndefined();
  expect(request).not.toHaveBeenCalled();
  expect(persist).not.toHaveBeenCalled();
});
