import { expect, it } from "vitest";
import { variantTasks } from "../../../../sim/cli/workers/variantTask.ts";

it("has every variant of every pack once, in order", () => {
  const tasks = variantTasks([3, 1], 1000, 2);
  for (const packIndex of [3, 1]) {
    const ofPack = tasks.filter((task) => task.packIndex === packIndex);
    expect(ofPack[0].from).toBe(0);
    expect(ofPack.at(-1)?.to).toBe(1000);
    ofPack.slice(1).forEach(({ from }, k) => void expect(from).toBe(ofPack[k].to));
  }
});

it("has four tasks or more for each worker, of 512 variants at most", () => {
  expect(variantTasks([0], 16, 2).map(({ from, to }) => to - from)).toEqual(Array(8).fill(2));
  expect(variantTasks([0], 3, 2)).toHaveLength(3);
  expect(Math.max(...variantTasks([0], 100_000, 2).map(({ from, to }) => to - from))).toBe(512);
});
