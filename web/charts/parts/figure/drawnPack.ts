import type { Channels } from "../../../../sim/index.ts";

/** A recorded run as figures take it; `index` is its place in the job's list and settles its colour, dash and mark. */
export interface DrawnPack {
  readonly name: string;
  readonly index: number;
  readonly channels: Channels;
}
