import type * as z from "zod";
import { Motor } from "../job/schema/motor.ts";
import { brushedMotors } from "./motorsBrushed.ts";
import { inductionMotors } from "./motorsInduction.ts";
import { magnetMotors } from "./motorsMagnet.ts";
import { partOf } from "./part.ts";

export const MotorPart = partOf(Motor);
export type MotorPart = z.infer<typeof MotorPart>;

/** The generic motors with their controllers' losses, by kind and from small to large. */
export const motors: readonly MotorPart[] = [...inductionMotors, ...magnetMotors, ...brushedMotors];
