import type { Driver } from "./driver.ts";

/** A started browser of another engine than Chromium's. */
export interface Engine {
  readonly driver: Driver;
  /** The folder that saved files come to. */
  readonly downloads: string;
  /** Ends the browser, and takes away what it left. */
  close(): Promise<void>;
}
