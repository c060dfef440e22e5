import type { Page } from "playwright-core";
import type { JobHead, VersionHead } from "../../web/store/database/jobRecord.ts";

/** What the tests look at of the records in the browser's database, and the key of every record by its store. */
export interface StoredRecords {
  readonly heads: readonly JobHead[];
  readonly bodies: readonly {
    readonly id: string;
    readonly frame: { readonly vehicle: { readonly load_kg: number } };
  }[];
  readonly versions: readonly { readonly jobId: string; readonly head: VersionHead }[];
  readonly keys: Readonly<Record<string, readonly (string | readonly unknown[])[]>>;
}

/** The records of the jobs in the browser's database as they lie there, read past the page's own code. */
export async function storedRecords(page: Page): Promise<StoredRecords> {
  return page.evaluate(async (): Promise<StoredRecords> => {
    const answer = <T>(request: IDBRequest<T>) =>
      new Promise<T>((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const database = await answer(indexedDB.open("bellhousing"));
    const store = (name: string) => database.transaction(name).objectStore(name);
    const keys: Record<string, (string | unknown[])[]> = {};
    for (const name of database.objectStoreNames)
      keys[name] = (await answer(store(name).getAllKeys())) as (string | unknown[])[];
    const [heads, bodies, versions] = await Promise.all(
      ["heads", "bodies", "versions"].map((name) => answer(store(name).getAll())),
    );
    database.close();
    return { heads, bodies, versions, keys };
  });
}

/** Loads of all jobs in the browser's database that are not deleted, in rising order. */
export async function storedLoads(page: Page): Promise<number[]> {
  const { heads, bodies } = await storedRecords(page);
  const kept = new Set(heads.filter(({ shelf }) => shelf !== "removed").map(({ id }) => id));
  return bodies
    .filter(({ id }) => kept.has(id))
    .map(({ frame }) => frame.vehicle.load_kg)
    .sort((a, b) => a - b);
}
