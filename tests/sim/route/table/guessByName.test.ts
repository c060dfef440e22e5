import { expect, it } from "vitest";
import { guessByName } from "../../../../sim/route/table/guessByName.ts";
import { columnsOf, tenRows } from "./layoutOf.ts";

function guessed(header: string, row: (i: number) => string, isPackWanted = false) {
  const { layout, columns, roles } = columnsOf(header, ...tenRows(row));
  guessByName(layout, roles, isPackWanted);
  return columns.map((column) => roles.of(column)?.role);
}

it("gives columns the roles that their headers name", () => {
  expect(guessed("time,lat,lon,speed,note", (i) => `${i},50.0${i},8.5,${i},7`)).toEqual([
    "time",
    "lat",
    "lon",
    "speed",
    undefined,
  ]);
});

it("takes the time that states a day before a clock, and a clock before what counts from a start", () => {
  const moment = (i: number) => `2024-05-03 08:12:0${i}`;
  expect(guessed("time,utc time,speed", (i) => `08:12:0${i},${moment(i)},${i}`)).toEqual([undefined, "time", "speed"]);
  expect(guessed("time since start,time,speed", (i) => `${i},08:12:0${i},${i}`)).toEqual([undefined, "time", "speed"]);
});

it("knows hemispheres by their letters alone", () => {
  expect(guessed("time,lat,a,lon,b", (i) => `${i},50.0${i},S,8.5,W`)).toEqual([
    "time",
    "lat",
    "latHemisphere",
    "lon",
    "lonHemisphere",
  ]);
});

it("takes the receiver's speed where a dashboard has one too", () => {
  expect(guessed("time,speed,GPS speed", (i) => `${i},${i},${i}`)).toEqual(["time", undefined, "speed"]);
});

it("takes no 12 V system for the pack", () => {
  expect(guessed("time,speed,voltage", (i) => `${i},${i},13.${i}`)).toEqual(["time", "speed", undefined]);
  expect(guessed("time,speed,voltage", (i) => `${i},${i},108.${i}`)).toEqual(["time", "speed", "packVoltage"]);
});
