import { describe, it } from "vitest";
import { emptyShelves, memoryStore } from "../../../web/store/memoryStore.ts";
import { storeContract } from "../../support/storeContract.ts";

describe("the store in memory", () => {
  it.each(storeContract.map((each) => [each.name, each] as const))("%s", async (_, { run }) => {
    const shelves = emptyShelves();
    await run({ here: memoryStore(shelves), there: memoryStore(shelves) });
  });
});
