import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { AccessoryPart, accessories } from "../../../shared/parts/accessories.ts";
import { BodyPart, bodies } from "../../../shared/parts/bodies.ts";
import { ChargerPart, chargers } from "../../../shared/parts/chargers.ts";
import { ModulePart, modules } from "../../../shared/parts/modules.ts";
import { MotorPart, motors } from "../../../shared/parts/motors.ts";
import { SupplyPart, supplies } from "../../../shared/parts/supplies.ts";
import { TyresPart, tyres } from "../../../shared/parts/tyres.ts";

// What holds for parts of every kind. What a kind must hold by itself stands in its own file beside this one.
const kinds = [
  { kind: "motor", schema: MotorPart, parts: motors, least: 6 },
  { kind: "module", schema: ModulePart, parts: modules, least: 5 },
  { kind: "body", schema: BodyPart, parts: bodies, least: 7 },
  { kind: "tyres", schema: TyresPart, parts: tyres, least: 5 },
  { kind: "charger", schema: ChargerPart, parts: chargers, least: 3 },
  { kind: "supply", schema: SupplyPart, parts: supplies, least: 4 },
  { kind: "accessory", schema: AccessoryPart, parts: accessories, least: 6 },
];

describe.each(kinds)("each $kind", ({ schema, parts, least }) => {
  it.each(parts.map((part) => [part.id, part] as const))(
    "%s fits its schema, each number with an origin",
    (_, part) => {
      const result = schema.safeParse(part);
      expect(result.error?.issues ?? []).toEqual([]);
      // Nothing was left to a default: the data are what a job takes as they are.
      expect(result.data).toEqual(part);
    },
  );

  it("has an id of its own and there are enough of them", () => {
    expect(new Set(parts.map(({ id }) => id)).size).toBe(parts.length);
    expect(parts.length).toBeGreaterThanOrEqual(least);
  });
});

it("cites only sources that the list of references knows", () => {
  const references = readFileSync("sim/REFERENCES.md", "utf8");
  const cited = kinds.flatMap(({ parts }) =>
    parts.flatMap((part) => Object.values(part.origins).flatMap(({ citation }) => citation ?? [])),
  );
  expect(cited.length).toBeGreaterThan(20);
  const unknown = cited.filter((citation) => {
    const key = /^\[([A-Za-z0-9-]+), .+\]$/.exec(citation)?.[1];
    return key === undefined || !references.includes(`- **${key}**: `);
  });
  expect(unknown).toEqual([]);
});
