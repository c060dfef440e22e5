import pianoTuner from "./piano-tuner.bellhousing.json" with { type: "json" };

/** A job to start from or to look at. Each is an invented example and says so. */
export interface Demo {
  readonly id: string;
  readonly title: string;
  /** The document as it stands in the file; `readJob` makes a job of it. */
  readonly document: unknown;
}

/** What a first visit shows, and what a new job begins from; beside the others, so that it can be fetched without them. */
export const firstDemo: Demo = { id: "piano-tuner", title: pianoTuner.title, document: pianoTuner };
