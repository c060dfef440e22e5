import type { Page } from "playwright-core";

interface Found {
  readonly heads: readonly { readonly id: string; readonly shelf: string }[];
  readonly bodies: readonly {
    readonly id: string;
    readonly frame: { readonly vehicle: { readonly load_kg: number } };
  }[];
}

/** Loads of all jobs in the browser's database that are not deleted, in rising order, by the records themselves. */
export async function storedLoads(page: Page): Promise<number[]> {
  const { heads, bodies } = await page.evaluate(async (): Promise<Found> => {
    const open = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open("bellhousing");
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const all = <T>(store: string) =>
      new Promise<T[]>((resolve) => {
        const asked = open.transaction(store).objectStore(store).getAll();
        asked.onsuccess = () => resolve(asked.result);
      });
    const found = {
      heads: await all<Found["heads"][number]>("heads"),
      bodies: await all<Found["bodies"][number]>("bodies"),
    };
    open.close();
    return found;
  });
  const kept = new Set(heads.filter(({ shelf }) => shelf !== "removed").map(({ id }) => id));
  return bodies
    .filter(({ id }) => kept.has(id))
    .map(({ frame }) => frame.vehicle.load_kg)
    .sort((a, b) => a - b);
}
