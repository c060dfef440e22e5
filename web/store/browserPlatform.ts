import { DATABASE_NAME } from "./database/database.ts";
import { databaseStore } from "./database/databaseStore.ts";
import type { FileHandle } from "./files/linkedFile.ts";
import { pageInOneFile, sourceOf } from "./files/pageInOneFile.ts";
import type { Platform, TabMessage } from "./platform.ts";

const B_PER_MB = 1e6;
const SESSION_LOCK = "bellhousing-session-";

/** A picker that only some browsers have, and the library of types does not know. */
interface SavePicker {
  showSaveFilePicker?(options: {
    readonly suggestedName: string;
    readonly types: readonly { readonly description: string; readonly accept: Record<string, readonly string[]> }[];
  }): Promise<FileHandle>;
}

/** The world as a browser has it. What a browser lacks (old ones, a page opened from disk) is left out, not faked. */
export function browserPlatform(): Platform {
  const channel = typeof BroadcastChannel === "undefined" ? undefined : new BroadcastChannel(DATABASE_NAME);
  const source = sourceOf(document); // now, since nothing was put into the page yet
  const picker = (window as Window & SavePicker).showSaveFilePicker?.bind(window);
  const world: Platform = {
    openStore: databaseStore,
    now_ms: () => Date.now(),
    newId,
    later(wait_ms, then) {
      const timer = setTimeout(then, wait_ms);
      return () => clearTimeout(timer);
    },
    broadcast: (message) => channel?.postMessage(message),
    onBroadcast(listener) {
      const onMessage = (event: MessageEvent<TabMessage>) => listener(event.data);
      channel?.addEventListener("message", onMessage);
      return () => channel?.removeEventListener("message", onMessage);
    },
    holdSession(session) {
      // Held by a promise that never ends: the browser lets go of the lock when the page is gone, however it went.
      navigator.locks?.request(SESSION_LOCK + session, () => new Promise<never>(() => {})).catch(() => {});
    },
    async liveSessions() {
      if (!navigator.locks) return undefined;
      const { held = [] } = await navigator.locks.query();
      const names = held.flatMap(({ name }) =>
        name?.startsWith(SESSION_LOCK) ? [name.slice(SESSION_LOCK.length)] : [],
      );
      return new Set(names);
    },
    onHidden(listener) {
      const onChange = () => document.visibilityState === "hidden" && listener();
      return listenTo([
        [document, "visibilitychange", onChange],
        [window, "pagehide", listener],
      ]);
    },
    onClosing(isAtRisk) {
      const onLeave = (event: Event) => {
        if (isAtRisk()) event.preventDefault();
      };
      return listenTo([[window, "beforeunload", onLeave]]);
    },
    onShown(listener) {
      const onChange = () => document.visibilityState === "visible" && listener();
      return listenTo([
        [document, "visibilitychange", onChange],
        [window, "pageshow", listener],
        [window, "focus", listener],
      ]);
    },
    pageInOneFile: () => pageInOneFile(source),
    async askToKeep() {
      return navigator.storage?.persist?.();
    },
    async room() {
      // Some private windows have the calls and refuse them.
      const [isKept, estimate] = await Promise.all([
        navigator.storage?.persisted?.().catch(() => undefined),
        navigator.storage?.estimate?.().catch(() => undefined),
      ]);
      return {
        ...(isKept !== undefined && { isKept }),
        ...(estimate?.usage !== undefined && { used_MB: estimate.usage / B_PER_MB }),
        ...(estimate?.quota !== undefined && { room_MB: estimate.quota / B_PER_MB }),
      };
    },
    download(name, text, type = "application/json") {
      const link = document.createElement("a");
      link.href = URL.createObjectURL(new Blob([text], { type }));
      link.download = name;
      link.click();
      // The browser reads the address after the click; freeing it at once would cut the file short in some.
      setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    },
  };
  if (!picker) return world;
  return {
    ...world,
    async chooseFile(name) {
      try {
        const types = [{ description: "Bellhousing job", accept: { "application/json": [".json"] } }];
        return await picker({ suggestedName: name, types });
      } catch (error) {
        if (error instanceof DOMException && error.name === "AbortError") return undefined;
        throw error;
      }
    },
  };
}

/** The world of a page that was sent with its job inside: nothing of it is stored, and no other page hears of it. */
export function sentPlatform(): Platform {
  const { chooseFile: _none, ...world } = browserPlatform();
  const nothing = () => () => {};
  return {
    ...world,
    openStore: async () => (await import("./database/memoryStore.ts")).memoryStore(),
    broadcast: () => {},
    onBroadcast: nothing,
    onClosing: nothing,
    holdSession: () => {},
    askToKeep: async () => undefined,
  };
}

/** Sixteen random bytes as text; the browser's own maker of ids is missing on pages that are not served safely. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

function listenTo(targets: readonly (readonly [EventTarget, string, (event: Event) => void])[]): () => void {
  for (const [target, type, listener] of targets) target.addEventListener(type, listener);
  return () => {
    for (const [target, type, listener] of targets) target.removeEventListener(type, listener);
  };
}
