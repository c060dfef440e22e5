import * as z from "zod";
import { between } from "../job/schema/number.ts";
import { practice, published } from "./origin.ts";
import { type Part, partOf } from "./part.ts";

/** What a road's surface does to the job's environment. */
export const Surface = z.strictObject({ grip_coeff: between(0.05, 1.5) });
export type Surface = z.infer<typeof Surface>;

export const SurfacePart = partOf(Surface);

const book = "[Wong2008, ch. 1]";
const remembered = "greatest grip just before sliding; from memory, unconfirmed";

/** Surfaces by the grip they leave a road tyre. Old, hard or cold rubber holds less. */
export const surfaces: readonly Part<Surface>[] = [
  surface("dry-tarmac", "Dry tarmac", 0.8, published(book, 0.75, 0.9, remembered)),
  surface("wet-tarmac", "Wet tarmac", 0.55, published(book, 0.45, 0.7, remembered)),
  surface("gravel", "Gravel", 0.6, published(book, 0.5, 0.65, remembered)),
  surface("wet-grass", "Wet grass", 0.3, practice(0.2, 0.4)),
  surface("packed-snow", "Packed snow", 0.2, published(book, 0.15, 0.3, remembered)),
];

function surface(
  id: string,
  title: string,
  grip_coeff: number,
  origin: Part<Surface>["origins"][string],
): Part<Surface> {
  return { id, title, data: { grip_coeff }, origins: { grip_coeff: origin } };
}
