import { countOf } from "../../log/countOf.ts";
import { type Repair, type RepairEvent, type RepairKind, repairKinds } from "./cleanedLog.ts";

const KEPT_EVENTS = 50;

/** How a count of each class reads: singular and plural. */
const nouns: Readonly<Record<RepairKind, readonly [string, string]>> = {
  clockChange: ["change of the clock undone", "changes of the clock undone"],
  backwardTime: ["fix out of order in time", "fixes out of order in time"],
  duplicate: ["repeated fix dropped", "repeated fixes dropped"],
  zeroFix: ["position at 0,0 dropped", "positions at 0,0 dropped"],
  wildFix: ["wild position dropped", "wild positions dropped"],
  multipath: ["sideways step of the positions put back", "sideways steps of the positions put back"],
  tunnel: ["gap bridged as a tunnel", "gaps bridged as tunnels"],
  signalLoss: ["gap from lost signal", "gaps from lost signal"],
  parked: ["parking without a log", "parkings without a log"],
  standingDrift: ["stand held still", "stands held still"],
  speedScale: ["correction of the recorded speed's scale", "corrections of the recorded speed's scale"],
  speedNoise: ["second of speed smoothed", "seconds of speed smoothed"],
  acceleration: ["second held to what a car can do", "seconds held to what a car can do"],
  heightStep: ["step of the height taken out", "steps of the height taken out"],
  heightNoise: ["metre of false climb smoothed away", "metres of false climb smoothed away"],
  gradient: ["piece of road held to the steepest there are", "pieces of road held to the steepest there are"],
};

interface Gathered {
  count: number;
  from_s: number;
  to_s: number;
  words: string;
  readonly events: (RepairEvent & { readonly weight: number })[];
}

/** Repairs of one log, gathered class by class while it is cleaned. */
export class RepairList {
  private readonly gathered = new Map<RepairKind, Gathered>();
  private readonly off: ReadonlySet<RepairKind>;

  constructor(off: readonly RepairKind[] = []) {
    this.off = new Set(off);
  }

  /** False where this class of repair is turned off. */
  does(kind: RepairKind): boolean {
    return !this.off.has(kind);
  }

  /** A list that leaves the same classes out and starts empty: for work that is done again. */
  emptied(): RepairList {
    return new RepairList([...this.off]);
  }

  /** Adds `count` repairs of one event; `weight` orders events by how much they matter. */
  add(kind: RepairKind, count: number, from_s: number, to_s: number, detail: string, weight = to_s - from_s): void {
    const entry = this.gathered.get(kind) ?? {
      count: 0,
      from_s: Number.POSITIVE_INFINITY,
      to_s: Number.NEGATIVE_INFINITY,
      words: "",
      events: [],
    };
    entry.count += count;
    entry.from_s = Math.min(entry.from_s, from_s);
    entry.to_s = Math.max(entry.to_s, to_s);
    entry.events.push({ from_s, to_s, detail, weight });
    if (entry.events.length > 4 * KEPT_EVENTS) {
      entry.events.sort((a, b) => b.weight - a.weight);
      entry.events.length = KEPT_EVENTS;
    }
    this.gathered.set(kind, entry);
  }

  count(kind: RepairKind): number {
    return this.gathered.get(kind)?.count ?? 0;
  }

  finish(): readonly Repair[] {
    const repairs: Repair[] = [];
    for (const kind of repairKinds) {
      const entry = this.gathered.get(kind);
      if (entry && entry.count > 0) {
        const largest = [...entry.events].sort((a, b) => b.weight - a.weight).slice(0, KEPT_EVENTS);
        const events = largest
          .sort((a, b) => a.from_s - b.from_s)
          .map(({ from_s, to_s, detail }) => ({ from_s, to_s, detail }));
        repairs.push({
          kind,
          count: entry.count,
          detail: detailOf(kind, entry, events),
          from_s: entry.from_s,
          to_s: entry.to_s,
          events,
        });
      }
    }
    return repairs;
  }
}

function detailOf(kind: RepairKind, entry: Gathered, events: readonly RepairEvent[]): string {
  if (entry.events.length === 1 && events[0]) {
    return events[0].detail;
  }
  const [one, many] = nouns[kind];
  const shown = events.slice(0, 3).map((event) => event.detail);
  const more = entry.events.length > shown.length ? "; and others" : "";
  return `${countOf(entry.count, one, many)}: ${shown.join("; ")}${more}`;
}
