import { databaseStore } from "../../web/store/databaseStore.ts";
import { storeContract } from "./storeContract.ts";

declare global {
  interface Window {
    /** Runs one case of the contract of stores against the browser's database, from two connections. */
    runContract(name: string): Promise<void>;
  }
}

window.runContract = async (name) => {
  const found = storeContract.find((each) => each.name === name);
  if (!found) throw new Error(`there is no case ${name}`);
  const [here, there] = [await databaseStore(), await databaseStore()];
  for (const { id } of (await here.list()).heads) await here.erase(id);
  await found.run({ here, there });
  here.close();
  there.close();
};
