import bakeryVan from "./bakery-van.bellhousing.json" with { type: "json" };
import pianoTuner from "./piano-tuner.bellhousing.json" with { type: "json" };
import vineyardPickup from "./vineyard-pickup.bellhousing.json" with { type: "json" };

/** A job to start from or to look at. Each is an invented example and says so. */
export interface Demo {
  readonly id: string;
  readonly title: string;
  /** The document as it stands in the file; `readJob` makes a job of it. */
  readonly document: unknown;
}

/** The demo jobs, the first one first. */
export const demos: readonly Demo[] = [
  { id: "piano-tuner", title: pianoTuner.title, document: pianoTuner },
  { id: "bakery-van", title: bakeryVan.title, document: bakeryVan },
  { id: "vineyard-pickup", title: vineyardPickup.title, document: vineyardPickup },
];
