import { signal } from "@preact/signals-core";
import { describe, expect, it } from "vitest";
import { InputError } from "../../../../shared/problems.ts";
import { createGraph, type Definition } from "../../../../web/notebook/graph/graph.ts";

/** A question whose answers the test gives itself, in the order it wants. */
function held<T>() {
  const waiting: { answer: (value: T) => void; fail: (error: Error) => void }[] = [];
  return { waiting, ask: () => new Promise<T>((answer, fail) => waiting.push({ answer, fail })) };
}
const settled = () => new Promise((resolve) => setTimeout(resolve));

describe("graph of values", () => {
  it("computes again only what depends on the change", () => {
    const mass = signal(900);
    const road = signal("hill");
    const computed: string[] = [];
    const graph = createGraph([
      { name: "mass", from: mass },
      { name: "road", from: road },
      {
        name: "weight",
        inputs: ["mass"],
        compute: (values: { mass: number }) => {
          computed.push("weight");
          return values.mass * 10;
        },
      },
      {
        name: "route",
        inputs: ["road"],
        compute: (values: { road: string }) => {
          computed.push("route");
          return values.road;
        },
      },
    ]);
    const weight = graph.read("weight");
    const route = graph.read("route");
    expect([weight.value, route.value].map(({ state }) => state)).toEqual(["ready", "ready"]);
    computed.length = 0;
    mass.value = 1000;
    expect(weight.value).toEqual({ state: "ready", value: 10_000, isLate: false });
    expect(route.value).toEqual({ state: "ready", value: "hill", isLate: false });
    expect(computed).toEqual(["weight"]);
  });

  it("stops where an intermediate value comes out the same", () => {
    const mass = signal(904);
    let computed = 0;
    const graph = createGraph([
      { name: "mass", from: mass },
      { name: "tens", inputs: ["mass"], compute: (values: { mass: number }) => Math.floor(values.mass / 10) },
      {
        name: "words",
        inputs: ["tens"],
        compute: (values: { tens: number }) => {
          computed += 1;
          return `${values.tens} tens`;
        },
      },
    ]);
    const words = graph.read("words");
    expect(words.value.state).toBe("ready");
    mass.value = 905;
    expect(words.value).toEqual({ state: "ready", value: "90 tens", isLate: false });
    expect(computed).toBe(1);
  });

  it("stops where a value comes out equal, and keeps the parts of it that do", () => {
    const load = signal(70);
    const samples = new Float64Array([1, 2]);
    const drawn: unknown[] = [];
    const graph = createGraph([
      { name: "load", from: load },
      {
        name: "car",
        inputs: ["load"],
        compute: (values: { load: number }) => ({ gears: [{ name: "third" }], isHeavy: values.load > 100, samples }),
      },
      {
        name: "figure",
        inputs: ["car"],
        compute: ({ car }: { car: { gears: unknown } }) => drawn.push(car.gears),
      },
    ]);
    const figure = graph.read("figure");
    figure.value;
    load.value = 80;
    figure.value;
    expect(drawn).toHaveLength(1);
    load.value = 120;
    figure.value;
    expect(drawn).toHaveLength(2);
    expect(drawn[1]).toBe(drawn[0]);
  });

  it("says where a value failed and lets the others live", () => {
    const mass = signal(-1);
    const graph = createGraph([
      { name: "mass", from: mass },
      {
        name: "strict",
        inputs: ["mass"],
        compute: ({ mass }: { mass: number }) => {
          if (mass < 0) throw new Error(`found ${mass} kg`);
          return mass;
        },
      },
      { name: "after", inputs: ["strict"], compute: ({ strict }: { strict: number }) => strict },
      { name: "beside", inputs: ["mass"], compute: ({ mass }: { mass: number }) => mass + 1 },
    ]);
    expect(graph.read("strict").value).toMatchObject({ state: "failed", where: "strict", message: "found -1 kg" });
    expect(graph.read("after").value).toMatchObject({ state: "failed", where: "strict" });
    expect(graph.read("beside").value).toMatchObject({ state: "ready", value: 0 });
    mass.value = 5;
    expect(graph.read("after").value).toMatchObject({ state: "ready", value: 5 });
  });

  it("refuses a loop by naming the values in it", () => {
    const loop: Definition[] = [
      { name: "energy", inputs: ["mass"], compute: () => 0 },
      { name: "mass", inputs: ["pack"], compute: () => 0 },
      { name: "pack", inputs: ["energy"], compute: () => 0 },
    ];
    expect(() => createGraph(loop)).toThrow("energy, which needs mass, which needs pack, which needs energy");
  });

  it("refuses a name that nobody defines, and one that is defined twice", () => {
    expect(() => createGraph([{ name: "a", inputs: ["b"], compute: () => 0 }])).toThrow(InputError);
    const twice = { name: "a", from: signal(1) };
    expect(() => createGraph([twice, twice])).toThrow("a: found this name defined twice");
  });

  it("drops an answer that a newer question has overtaken, whichever comes first", async () => {
    const speed = signal(30);
    const { waiting, ask } = held<string>();
    const graph = createGraph([
      { name: "speed", from: speed },
      { name: "run", inputs: ["speed"], ask },
    ]);
    const run = graph.read("run");
    expect(run.value).toEqual({ state: "waiting" });
    speed.value = 40;
    speed.value = 50;
    expect(waiting).toHaveLength(3);
    waiting[2].answer("run at 50");
    await settled();
    waiting[0].answer("run at 30");
    waiting[1].fail(new Error("run at 40 failed"));
    await settled();
    expect(run.value).toEqual({ state: "ready", value: "run at 50", isLate: false });
  });

  it("marks what stands on an older answer as late until the new one is there", async () => {
    const speed = signal(30);
    const { waiting, ask } = held<number>();
    const graph = createGraph([
      { name: "speed", from: speed },
      { name: "run", inputs: ["speed"], ask },
      { name: "double", inputs: ["run"], compute: ({ run }: { run: number }) => 2 * run },
    ]);
    const double = graph.read("double");
    waiting[0].answer(7);
    await settled();
    expect(double.value).toEqual({ state: "ready", value: 14, isLate: false });
    speed.value = 40;
    expect(double.value).toEqual({ state: "ready", value: 14, isLate: true });
    waiting[1].answer(8);
    await settled();
    expect(double.value).toEqual({ state: "ready", value: 16, isLate: false });
  });

  it("keeps a value of before, late, while what it waits for is asked again, and works it out once", async () => {
    const load = signal(70);
    const { waiting, ask } = held<number>();
    const worked: number[] = [];
    const sum = (values: { load: number; range: number }) => {
      worked.push(values.load);
      return values.load + values.range;
    };
    const graph = createGraph([
      { name: "load", from: load },
      { name: "range", inputs: ["load"], ask },
      { name: "sum", inputs: ["load", "range"], waitsFor: ["range"], compute: sum },
    ]);
    const read = graph.read("sum");
    expect(read.value).toEqual({ state: "waiting" });
    waiting[0].answer(50);
    await settled();
    expect(read.value).toEqual({ state: "ready", value: 120, isLate: false });
    load.value = 80;
    expect(read.value).toEqual({ state: "ready", value: 120, isLate: true });
    waiting[1].answer(49);
    await settled();
    expect(read.value).toEqual({ state: "ready", value: 129, isLate: false });
    expect(worked).toEqual([70, 80]);
    load.value = 90;
    expect(read.value).toMatchObject({ isLate: true });
    waiting[2].fail(new Error("no such road"));
    await settled();
    expect(read.value).toMatchObject({ state: "failed", where: "range" });
  });

  it("may wait for what is no input of its own, and lives where that fails", async () => {
    const load = signal(70);
    const { waiting, ask } = held<number>();
    const graph = createGraph([
      { name: "load", from: load },
      { name: "painted", inputs: ["load"], ask },
      {
        name: "weight",
        inputs: ["load"],
        waitsFor: ["painted"],
        compute: (values: { load: number }) => 900 + values.load,
      },
    ]);
    const read = graph.read("weight");
    expect(read.value).toEqual({ state: "ready", value: 970, isLate: false });
    waiting[0].answer(1);
    await settled();
    load.value = 80;
    expect(read.value).toEqual({ state: "ready", value: 970, isLate: true });
    waiting[1].answer(2);
    await settled();
    expect(read.value).toEqual({ state: "ready", value: 980, isLate: false });
    load.value = 90;
    waiting[2].fail(new InputError([]));
    await settled();
    expect(read.value).toEqual({ state: "ready", value: 990, isLate: false });
  });

  it("asks once a change where a question waits for what is asked again, and takes no answer of before", async () => {
    const load = signal(70);
    const ranges = held<number>();
    const winters = held<string>();
    const put: unknown[] = [];
    const winter = (values: { load: number; range: number }) => {
      put.push([values.load, values.range]);
      return winters.ask();
    };
    const graph = createGraph([
      { name: "load", from: load },
      { name: "range", inputs: ["load"], ask: ranges.ask },
      { name: "winter", inputs: ["load", "range"], waitsFor: ["range"], ask: winter },
    ]);
    const read = graph.read("winter");
    ranges.waiting[0].answer(50);
    await settled();
    load.value = 80; // while the first question is still out
    winters.waiting[0].answer("of 70 kg");
    await settled();
    expect(read.value).toEqual({ state: "waiting" });
    ranges.waiting[1].answer(49);
    await settled();
    winters.waiting[1].answer("of 80 kg");
    await settled();
    expect(read.value).toEqual({ state: "ready", value: "of 80 kg", isLate: false });
    load.value = 90;
    expect(read.value).toEqual({ state: "ready", value: "of 80 kg", isLate: true });
    ranges.waiting[2].answer(49); // the same range: what hangs on the load is asked all the same
    await settled();
    winters.waiting[2].answer("of 90 kg");
    await settled();
    expect(read.value).toEqual({ state: "ready", value: "of 90 kg", isLate: false });
    expect(put).toEqual([
      [70, 50],
      [80, 49],
      [90, 49],
    ]);
  });

  it("has what stands meanwhile until an answer is there, never late, and again where there is none", async () => {
    const load = signal(70);
    const { waiting, ask } = held<string>();
    const graph = createGraph([
      { name: "load", from: load },
      { name: "surer", inputs: ["load"], meanwhile: "first look", ask },
    ]);
    const read = graph.read("surer");
    const first = { state: "ready", value: "first look", isLate: false };
    expect(read.value).toEqual(first);
    waiting[0].answer("many drives");
    await settled();
    expect(read.value).toEqual({ state: "ready", value: "many drives", isLate: false });
    load.value = 80;
    expect(read.value).toEqual(first);
    waiting[1].fail(new InputError([]));
    await settled();
    expect(read.value).toEqual(first);
  });

  it("does not ask again when no input changed, and asks again after a failure", async () => {
    const job = signal({ mass: 900 });
    const { waiting, ask } = held<number>();
    const graph = createGraph([
      { name: "job", from: job },
      { name: "mass", inputs: ["job"], compute: ({ job }: { job: { mass: number } }) => job.mass },
      { name: "run", inputs: ["mass"], ask },
    ]);
    job.value = { mass: 900 };
    expect(waiting).toHaveLength(1);
    waiting[0].fail(new Error("no such road"));
    await settled();
    expect(graph.read("run").value).toMatchObject({ state: "failed", where: "run", message: "no such road" });
    job.value = { mass: 901 };
    waiting[1].answer(1);
    await settled();
    expect(graph.read("run").value).toMatchObject({ state: "ready", value: 1 });
  });

  it("asks nothing more once it is stopped", async () => {
    const speed = signal(30);
    const { waiting, ask } = held<number>();
    const graph = createGraph([
      { name: "speed", from: speed },
      { name: "run", inputs: ["speed"], ask },
    ]);
    graph.stop();
    speed.value = 40;
    waiting[0].answer(1);
    await settled();
    expect(waiting).toHaveLength(1);
    expect(graph.read("run").value).toEqual({ state: "waiting" });
  });
});
