import type * as z from "zod";
import { Tyres } from "../job/schema/vehicle.ts";
import { invented, practice, published } from "./origin.ts";
import { partOf } from "./part.ts";

export const TyresPart = partOf(Tyres);
export type TyresPart = z.infer<typeof TyresPart>;

const rig = "[Wong2008, ch. 1]";
const remembered = "from memory, unconfirmed";
const stands = "measure the rolling circumference instead";

/** Tyres by kind and era: a set of four on good tarmac. Gravel, cold and low pressure add to them. */
export const tyres: readonly TyresPart[] = [
  {
    id: "modern-radial",
    title: "Radial of today, small car",
    data: {
      name: "Radial of today, small car",
      loadedRadius_mm: 284,
      rolling_coeff: 0.011,
      rollingRise_coeff: 0.0004,
      followsTemperature: true,
      wheelsInertia_kgm2: 2.6,
    },
    origins: {
      loadedRadius_mm: practice(271, 310, stands),
      rolling_coeff: published("[TRB286, ch. 3]", 0.009, 0.013, "a national survey found a mean of about 0.010"),
      rollingRise_coeff: published(rig, 0.0002, 0.001, remembered),
      wheelsInertia_kgm2: invented(1.8, 3.6),
    },
  },
  {
    id: "period-radial",
    title: "Radial of the period, small car",
    data: {
      name: "Radial of the period, small car",
      loadedRadius_mm: 284,
      rolling_coeff: 0.0136,
      rollingRise_coeff: 0.0004,
      followsTemperature: true,
      wheelsInertia_kgm2: 2.6,
    },
    origins: {
      loadedRadius_mm: practice(271, 310, stands),
      rolling_coeff: published(rig, 0.011, 0.016, remembered),
      rollingRise_coeff: published(rig, 0.0002, 0.001, remembered),
      wheelsInertia_kgm2: invented(1.8, 3.6),
    },
  },
  {
    id: "period-cross-ply",
    title: "Cross-ply of the period, small car",
    data: {
      name: "Cross-ply of the period, small car",
      loadedRadius_mm: 288,
      rolling_coeff: 0.0169,
      rollingRise_coeff: 0.0019,
      followsTemperature: true,
      wheelsInertia_kgm2: 2.8,
    },
    origins: {
      loadedRadius_mm: practice(271, 310, stands),
      rolling_coeff: published(rig, 0.015, 0.02, remembered),
      rollingRise_coeff: published(rig, 0.001, 0.003, remembered),
      wheelsInertia_kgm2: invented(1.9, 3.8),
    },
  },
  {
    id: "all-terrain",
    title: "All-terrain radial, pick-up or four-wheel drive",
    data: {
      name: "All-terrain radial, pick-up or four-wheel drive",
      loadedRadius_mm: 352,
      rolling_coeff: 0.015,
      rollingRise_coeff: 0.0008,
      followsTemperature: true,
      wheelsInertia_kgm2: 7,
    },
    origins: {
      loadedRadius_mm: practice(334, 382, stands),
      rolling_coeff: practice(0.012, 0.018),
      rollingRise_coeff: invented(0.0003, 0.002),
      wheelsInertia_kgm2: invented(5, 9),
    },
  },
  {
    id: "mud",
    title: "Mud tread, pick-up or four-wheel drive",
    data: {
      name: "Mud tread, pick-up or four-wheel drive",
      loadedRadius_mm: 362,
      rolling_coeff: 0.02,
      rollingRise_coeff: 0.0015,
      followsTemperature: true,
      wheelsInertia_kgm2: 8,
    },
    origins: {
      loadedRadius_mm: practice(334, 382, stands),
      rolling_coeff: practice(0.015, 0.025),
      rollingRise_coeff: invented(0.0005, 0.003),
      wheelsInertia_kgm2: invented(6, 10.5),
    },
  },
];
