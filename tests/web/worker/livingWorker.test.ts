import { afterEach, describe, expect, it } from "vitest";
import { partMissing } from "../../../web/worker/fetchPart.ts";
import { livingWorker } from "../../../web/worker/livingWorker.ts";

interface Api {
  double(value: number): Promise<number>;
  holdLife(): Promise<boolean>;
}

/** How a worker of the test behaves. */
interface Manner {
  /** Dies over its first question, without a word. */
  readonly dies?: boolean;
  /** Its script cannot be had. */
  readonly isMissing?: boolean;
  /** Answers that a part of it cannot be had. */
  readonly lacksPart?: boolean;
}

const opened: MessagePort[] = [];
afterEach(() => {
  for (const port of opened.splice(0)) port.close();
});

/** Workers by the manners given, one after the other; the last manner stays. A worker that dies frees its lock. */
async function workers(...manners: readonly Manner[]) {
  const { expose } = await import("comlink");
  const frees = new Map<string, () => void>();
  const started: string[] = [];
  const start = (name: string): Worker => {
    const manner = manners[Math.min(started.length, manners.length - 1)] ?? {};
    started.push(name);
    const { port1: inside, port2: outside } = new MessageChannel();
    opened.push(inside, outside);
    const api: Api = {
      holdLife: async () => true,
      double: async (value) => {
        if (manner.lacksPart) throw partMissing();
        if (!manner.dies) return 2 * value;
        frees.get(name)?.();
        return new Promise<never>(() => {});
      },
    };
    if (!manner.isMissing) expose(api, inside);
    outside.start();
    const worker = Object.assign(outside, { terminate: () => inside.close(), onmessageerror: null, onerror: null });
    if (manner.isMissing) setTimeout(() => outside.dispatchEvent(new Event("error", { cancelable: true })));
    return worker as unknown as Worker;
  };
  const whenFree = (lock: string) => new Promise<void>((resolve) => frees.set(lock, resolve));
  return { living: livingWorker<Api>(start, "test", whenFree), started };
}

describe("a worker", () => {
  it("starts with the first question and answers the next ones too", async () => {
    const { living, started } = await workers({});
    expect(started).toEqual([]);
    expect(await living.ask(({ api }) => api.double(4))).toBe(8);
    expect(await living.ask(({ api }) => api.double(5))).toBe(10);
    expect(started).toHaveLength(1);
  });

  it("is free once it has been started and answered what it was asked", async () => {
    const { living } = await workers({});
    expect(living.isFree()).toBe(false);
    const answer = living.ask(({ api }) => api.double(4));
    expect(living.isFree()).toBe(false);
    await answer;
    expect(living.isFree()).toBe(true);
  });

  it("that dies without a word is started anew, and the question asked again of the new one", async () => {
    const { living, started } = await workers({ dies: true }, {});
    const sizes: number[] = [];
    const answer = living.ask(async ({ api, sent }) => {
      sizes.push(sent.size);
      sent.add(1);
      await api.holdLife(); // by now its life is watched
      return api.double(4);
    });
    expect(await answer).toBe(8);
    expect(started).toHaveLength(2);
    expect(new Set(started).size).toBe(2);
    expect(sizes).toEqual([0, 0]); // what was sent to the first is gone with it
  });

  it("that dies twice over a question says so, and the next question begins with a new one", async () => {
    const { living, started } = await workers({ dies: true }, { dies: true }, {});
    const ask = () =>
      living.ask(async ({ api }) => {
        await api.holdLife();
        return api.double(4);
      });
    await expect(ask()).rejects.toThrow(/stopped twice.*Nothing typed is lost/);
    expect(await ask()).toBe(8);
    expect(started).toHaveLength(3);
  });

  it("whose script cannot be had says so, and is had once the server is there again", async () => {
    const { living } = await workers({ isMissing: true }, { isMissing: true }, {});
    await expect(living.ask(({ api }) => api.double(4))).rejects.toThrow("its server may have been stopped");
    expect(await living.ask(({ api }) => api.double(4))).toBe(8);
  });

  it("that lacks a part is given up, since only a new one asks for the part again", async () => {
    const { living, started } = await workers({ lacksPart: true }, {});
    await expect(living.ask(({ api }) => api.double(4))).rejects.toThrow("could not be fetched");
    expect(await living.ask(({ api }) => api.double(4))).toBe(8);
    expect(started).toHaveLength(2);
  });
});
