import type { Job } from "../../../shared/job/job.ts";
import type { Pack } from "../../../shared/job/schema/battery.ts";
import { packMass_kg } from "../../battery/packMass.ts";
import { prepare } from "../../step/prepare.ts";
import type { Trace } from "../../trace/trace.ts";
import { cellsOf } from "../money/quote.ts";
import type { Span } from "../money/span.ts";
import { type LayoutFigures, layoutFigures } from "./layoutFigures.ts";
import { layoutPack, modulesMost } from "./layoutPack.ts";
import { type RoadPower, roadPower } from "./roadPower.ts";
import { type RuledOut, ruledOut } from "./ruledOut.ts";

/** So many modules in series, so many strings side by side. */
export interface Layout {
  readonly pack: Pack;
  readonly figures: LayoutFigures;
  /** What its cells cost, in the job's currency, where the job says what cells cost. */
  readonly cost?: Span;
  /** Absent where it fits. */
  readonly out?: RuledOut;
}

/** Every layout of the job's module, and what they were compared with. */
export interface Layouts {
  /** By modules in series, then by strings. */
  readonly all: readonly Layout[];
  readonly modulesMost: number;
  readonly road: RoadPower;
}

/**
 * Every series-parallel layout of the job's module up to a number of modules, each compared with controller, charger, DC-DC converter,
 * currents and masses; what is ruled out stays in the list with its reason. What the road asks is that of the job's heaviest pack.
 */
export function layoutsOf(job: Job, trace: Trace): Layouts {
  const most = modulesMost(job);
  const road = roadPower(prepare(job, heaviestPack(job)), trace);
  const figuresOf = layoutFigures(job.module, road);
  const all: Layout[] = [];
  for (let series = 1; series <= most; series++) {
    for (let parallel = 1; series * parallel <= most && parallel <= MOST_STRINGS; parallel++) {
      const pack = layoutPack(job, series, parallel);
      const figures = figuresOf(pack);
      const out = ruledOut(job, pack, figures);
      const cost = cellsOf(pack.cellPrice ?? job.costs?.cells, pack, figures);
      all.push({ pack, figures, ...(cost && { cost }), ...(out && { out }) });
    }
  }
  return { all, modulesMost: most, road };
}

/** As many strings as a job may have. */
const MOST_STRINGS = 100;

/** The pack that asks the most of the road, and is least likely to be held back on it. */
function heaviestPack({ packs, module }: Job): Pack {
  const heaviest_kg = Math.max(...packs.map((pack) => packMass_kg(pack, module)));
  return packs.find((pack) => packMass_kg(pack, module) === heaviest_kg) ?? packs[0];
}
