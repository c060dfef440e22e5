import bakeryVan from "./bakery-van.bellhousing.json" with { type: "json" };
import { type Demo, firstDemo } from "./firstDemo.ts";
import vineyardPickup from "./vineyard-pickup.bellhousing.json" with { type: "json" };

export type { Demo };

/** The demo jobs, the first one first. */
export const demos: readonly Demo[] = [
  firstDemo,
  { id: "bakery-van", title: bakeryVan.title, document: bakeryVan },
  { id: "vineyard-pickup", title: vineyardPickup.title, document: vineyardPickup },
];
