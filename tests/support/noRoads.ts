import type { RoadsApi } from "../../web/worker/roads/roadsApi.ts";

/** Stands for the worker where a test asks nothing of it, and fails where it is asked. */
export const noRoads = new Proxy<RoadsApi>(Object.create(null), {
  get(_, name) {
    throw new Error(`${String(name)} was asked of the worker`);
  },
});
