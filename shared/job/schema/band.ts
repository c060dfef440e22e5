import * as z from "zod";
import { between } from "./number.ts";

/** A result in kilometres with what it may be, as a job keeps it of a state that was frozen or pinned. */
export const BandKm = z.strictObject({ value: between(-1e5, 1e5), low: between(-1e5, 1e5), high: between(-1e5, 1e5) });
