import { existsSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import about from "../../package.json" with { type: "json" };
import { root, sourceFiles, textOf } from "../support/sourceFiles.ts";

/** Which rooms each room may import from, itself aside, and which packages. A longer path is a room within a room. */
interface Arrow {
  readonly rooms: readonly string[];
  readonly packages: readonly string[];
}

const runTime = Object.keys(about.dependencies);
const logParts = ["shared", "sim/constants.ts", "sim/math", "sim/route/log"];
/** Rooms of the cleaning of logs, each using those before it. */
const cleanParts = (count: number) =>
  ["report", "rows", "gaps", "heights", "motion", "draws"].slice(0, count).map((part) => `sim/route/clean/${part}`);
/** What the rooms of web/ may take from below. */
const core = ["shared", "sim/index.ts"];
const chartParts = (...parts: readonly string[]) => parts.map((part) => `web/charts/parts/${part}`);
const notebookParts = [
  ...core,
  "web/look",
  "web/editing",
  "web/fields",
  "web/sections/parts",
  "web/worker/fetchPart.ts",
];
const physics = ["sim/math", "sim/trace", "sim/vehicle", "sim/motor", "sim/battery"];
const arrows: Readonly<Record<string, Arrow>> = {
  shared: { rooms: [], packages: ["zod"] },
  "sim/math": { rooms: ["shared", "sim/constants.ts"], packages: [] },
  "sim/math/kalman": { rooms: ["sim/math"], packages: [] },
  "sim/trace": { rooms: ["shared", "sim/constants.ts", "sim/math"], packages: [] },
  "sim/vehicle": { rooms: ["shared", "sim/constants.ts", "sim/math"], packages: [] },
  "sim/motor": { rooms: ["shared", "sim/constants.ts", "sim/math"], packages: [] },
  "sim/battery": { rooms: ["shared", "sim/constants.ts", "sim/math"], packages: [] },
  "sim/step": { rooms: ["shared", "sim/constants.ts", ...physics], packages: [] },
  "sim/route/log": { rooms: ["shared"], packages: runTime },
  "sim/route/gpx": { rooms: ["shared", "sim/route/log"], packages: runTime },
  "sim/route/kml": { rooms: ["shared", "sim/route/log"], packages: [] },
  "sim/route/tcx": { rooms: ["shared", "sim/route/log"], packages: [] },
  "sim/route/nmea": { rooms: ["shared", "sim/route/log"], packages: runTime },
  "sim/route/table": { rooms: ["shared", "sim/route/log"], packages: runTime },
  "sim/route/clean/report": { rooms: ["shared", "sim/route/log"], packages: [] },
  "sim/route/clean/rows": { rooms: [...logParts, "sim/route/clean/report"], packages: runTime },
  "sim/route/clean/gaps": { rooms: [...logParts, ...cleanParts(2)], packages: runTime },
  "sim/route/clean/heights": { rooms: [...logParts, ...cleanParts(3)], packages: runTime },
  "sim/route/clean/motion": { rooms: [...logParts, ...cleanParts(3)], packages: runTime },
  "sim/route/clean/draws": { rooms: [...logParts, ...cleanParts(5)], packages: runTime },
  "sim/route/clean": { rooms: [...logParts, "sim/trace", ...cleanParts(6)], packages: runTime },
  "sim/route/roads": { rooms: ["shared", "sim/trace", "sim/route/log", "sim/route/clean/heights"], packages: runTime },
  "sim/route/trips": {
    rooms: ["shared", "sim/trace", "sim/route/log", "sim/route/clean/report", "sim/route/roads"],
    packages: runTime,
  },
  "sim/route": {
    rooms: ["shared", "sim/trace", ...["log", "gpx", "tcx", "kml", "nmea", "table"].map((part) => `sim/route/${part}`)],
    packages: runTime,
  },
  "sim/plan/motorMap": { rooms: ["shared", "sim/constants.ts", ...physics], packages: runTime },
  "sim/plan/going": {
    rooms: ["shared", "sim/constants.ts", ...physics, "sim/step", "sim/plan/driveReport.ts"],
    packages: [],
  },
  "sim/plan/conditions": {
    rooms: ["shared", "sim/constants.ts", ...physics, "sim/step", "sim/plan/going"],
    packages: [],
  },
  "sim/battery/ageing": { rooms: [], packages: [] },
  "sim/plan/years": {
    rooms: [
      ...["shared", ...physics, "sim/step"],
      ...["sim/plan/going", "sim/plan/conditions", "sim/plan/drive", "sim/plan/money", "sim/plan/year"],
    ],
    packages: [],
  },
  "sim/plan/year": {
    rooms: ["shared", ...physics, "sim/step", "sim/plan/going", "sim/plan/conditions"],
    packages: [],
  },
  "sim/plan/week": {
    rooms: ["shared", ...physics, "sim/step", "sim/plan/going", "sim/plan/conditions", "sim/plan/charging"],
    packages: [],
  },
  "sim/plan/findings": {
    rooms: ["shared", ...physics, "sim/step", "sim/plan/driveReport.ts", "sim/plan/going", "sim/plan/reasons"],
    packages: runTime,
  },
  "sim/plan": { rooms: ["shared", "sim/constants.ts", ...physics, "sim/step", "sim/plan"], packages: runTime },
  // constants.ts and index.ts, the door.
  sim: { rooms: ["shared", ...physics, "sim/step", "sim/route", "sim/plan"], packages: [] },
  // The edge that knows Node; its `sheet` command may draw the client sheet. serve.ts builds the page before it serves it.
  "sim/cli": {
    rooms: ["shared", "sim", "web/sheet", "web/charts", "package.json"],
    packages: [...runTime, "node:*", "vite"],
  },
  "web/look": { rooms: ["shared"], packages: runTime },
  "web/editing/fieldTable": { rooms: ["shared"], packages: runTime },
  "web/editing": { rooms: ["shared", "web/editing/fieldTable"], packages: runTime },
  "web/store/database": { rooms: ["shared", "web/store/platform.ts"], packages: runTime },
  "web/store/versions": { rooms: ["shared", "web/store/database"], packages: runTime },
  "web/store": { rooms: ["shared", "web/store"], packages: runTime },
  "web/worker": { rooms: [...core, "cycles", "web/store"], packages: runTime },
  "web/log": { rooms: [...core, "web/editing", "web/store", "web/worker"], packages: runTime },
  "web/charts/parts/figure": { rooms: [...core, "web/look"], packages: runTime },
  "web/charts/parts/axes": { rooms: [...core, "web/look", ...chartParts("figure")], packages: runTime },
  "web/charts/parts/lines": { rooms: [...core, "web/look", ...chartParts("figure", "axes")], packages: runTime },
  "web/charts/parts/keys": { rooms: chartParts("figure"), packages: runTime },
  "web/charts/parts/track": {
    rooms: [...core, "web/look", ...chartParts("figure", "axes", "keys", "lines")],
    packages: runTime,
  },
  "web/charts/parts/motorGround": {
    rooms: [...core, "web/look", ...chartParts("figure", "axes", "lines", "keys")],
    packages: runTime,
  },
  "web/charts/parts/reading": { rooms: ["web/look", ...chartParts("figure")], packages: runTime },
  "web/charts": { rooms: [...core, "web/look", "web/charts/parts"], packages: runTime },
  "web/fields": { rooms: [...core, "web/editing", "web/log", "web/worker", ...chartParts("axes")], packages: runTime },
  "web/forms/parts": { rooms: ["shared", "web/editing", "web/fields"], packages: runTime },
  "web/forms/car": { rooms: [...core, "web/editing", "web/fields", "web/forms/parts"], packages: runTime },
  "web/forms/motor": {
    rooms: [...core, "web/editing", "web/fields", "web/forms/parts", "web/worker/fetchPart.ts"],
    packages: runTime,
  },
  "web/forms/pack": { rooms: ["shared", "web/editing", "web/fields", "web/forms/parts"], packages: runTime },
  "web/forms/costs": { rooms: ["shared", "web/editing", "web/fields"], packages: runTime },
  "web/forms/road": { rooms: [...core, "web/editing", "web/fields", "web/log", "web/worker"], packages: runTime },
  "web/forms/charts": { rooms: ["shared", "web/fields", ...chartParts("axes")], packages: runTime },
  "web/sections/parts": {
    rooms: [...core, ...["look", "editing", "fields", "log", "worker", "charts"].map((room) => `web/${room}`)],
    packages: runTime,
  },
  "web/sections": {
    rooms: [
      ...core,
      "web/look",
      "web/sections/parts",
      ...["editing", "fields", "forms", "log", "worker", "charts"].map((room) => `web/${room}`),
    ],
    packages: runTime,
  },
  "web/chapters": {
    rooms: [...core, "web/fields", "web/forms", "web/charts", "web/sections/parts"],
    packages: runTime,
  },
  // Headline, picture, table and controls of the answer; the client sheet takes them too.
  "web/sheet": { rooms: [...core, "web/answer", "web/editing/fieldTable"], packages: runTime },
  "web/answer/picture": { rooms: [...core, "web/look"], packages: runTime },
  "web/answer": {
    rooms: [...core, "web/look", "web/editing", "web/fields", "web/answer/picture"],
    packages: runTime,
  },
  "web/notebook/paper": {
    rooms: [...core, "web/look", "web/sheet", "web/worker/keptPart.ts", "web/notebook/graph"],
    packages: runTime,
  },
  // Chapters and workings together: what is fetched once the answer stands.
  "web/notebook/below": {
    rooms: [
      ...notebookParts,
      "web/charts",
      "web/chapters",
      "web/sections",
      ...["graph", "figures", "chapters", "workings", "notes", "reasons"].map((room) => `web/notebook/${room}`),
    ],
    packages: runTime,
  },
  "web/notebook/workings": { rooms: [...notebookParts, "web/notebook/graph"], packages: runTime },
  "web/notebook/chapters": {
    rooms: [...notebookParts, "web/charts", "web/chapters", "web/notebook/graph", "web/notebook/figures"],
    packages: runTime,
  },
  "web/notebook/graph": {
    rooms: [...core, ...["editing", "fields", "log", "worker", "charts", "sections"].map((room) => `web/${room}`)],
    packages: runTime,
  },
  "web/notebook/notes": { rooms: notebookParts, packages: runTime },
  "web/notebook/figures": {
    rooms: [...notebookParts, "web/charts", "web/notebook/graph", "web/notebook/notes"],
    packages: runTime,
  },
  "web/notebook/reasons": { rooms: [...notebookParts, "web/notebook/graph"], packages: runTime },
  "web/notebook/jobs": { rooms: [...notebookParts, "web/store", "web/notebook/figures"], packages: runTime },
  "web/notebook/start": {
    rooms: [...core, "web/look", "web/editing", "web/fields", "web/worker/keptPart.ts"],
    packages: runTime,
  },
  // The frame of the notebook, and main.ts, mount all of it.
  web: { rooms: [...core, "web"], packages: runTime },
};

interface Import {
  readonly file: string;
  readonly path: string;
  /** For a relative path, what it leads to from the top of the checkout; a `?raw` is cut off. */
  readonly target: string | undefined;
}

function importsOf(file: string): readonly Import[] {
  return ts.preProcessFile(textOf(file), true, true).importedFiles.map(({ fileName: path }) => ({
    file,
    path,
    target: path.startsWith(".") ? normalize(join(dirname(file), path.replace(/\?.*$/, ""))) : undefined,
  }));
}

/** The innermost room of the table above that a file lies in. */
function roomOf(file: string): string {
  const rooms = Object.keys(arrows).filter((room) => isIn(file, room));
  return rooms.reduce((innermost, room) => (room.length > innermost.length ? room : innermost), "");
}

function isIn(path: string, place: string): boolean {
  return path === place || path.startsWith(`${place}/`);
}

function isPackageAllowed(path: string, packages: readonly string[]): boolean {
  return packages.some((name) =>
    name === "node:*" ? path.startsWith("node:") : path === name || path.startsWith(`${name}/`),
  );
}

const files = sourceFiles("shared", "sim", "web");
const imports = files.flatMap(importsOf);
const tell = ({ file, path }: Import) => `${file} -> ${path}`;

describe("imports", () => {
  it("are read from every room", () => {
    for (const room of Object.keys(arrows)) expect(files.some((file) => roomOf(file) === room)).toBe(true);
    expect(imports.length).toBeGreaterThan(files.length);
  });

  it.each(Object.keys(arrows))("of %s lead only where its arrows point", (room) => {
    const { rooms, packages } = arrows[room] ?? { rooms: [], packages: [] };
    const strays = imports.filter(({ file, path, target }) => {
      if (roomOf(file) !== room) return false;
      if (target === undefined) return !isPackageAllowed(path, packages);
      return roomOf(target) !== room && !rooms.some((allowed) => isIn(target, allowed));
    });
    expect(strays.map(tell)).toEqual([]);
  });

  it("name real files, with their ending", () => {
    const tests = sourceFiles("tests").flatMap(importsOf);
    const broken = [...imports, ...tests].filter(
      ({ target }) => target !== undefined && !existsSync(join(root, target)),
    );
    expect(broken.map(tell)).toEqual([]);
  });

  it("never lead from one section of the notebook to another", () => {
    const strays = imports.filter(
      ({ file, target }) =>
        target !== undefined &&
        isIn(target, "web/sections") &&
        file !== "web/sections/index.ts" &&
        isIn(file, "web/sections") &&
        roomOf(target) !== "web/sections/parts" &&
        roomOf(file) !== "web/sections/parts",
    );
    expect(strays.map(tell)).toEqual([]);
  });

  it("of the cycles take the tables as text", () => {
    const strays = imports.filter(({ path, target }) => target && isIn(target, "cycles") && !path.endsWith(".csv?raw"));
    expect(strays.map(tell)).toEqual([]);
  });
});
