import { JSDOM } from "jsdom";
import { expect, it } from "vitest";
import { message, quantity } from "../../../shared/quantity/message.ts";
import type { SettingsSheet } from "../../../sim/index.ts";
import { type SettingsPaperInput, settingsPaper } from "../../../web/sheet/settingsPaper.ts";

const { document } = new JSDOM("").window;
const usual = message`common practice, no source`;
const sheet: SettingsSheet = {
  pack: "Six modules",
  cautions: [message`Isolate the pack.`],
  groups: [
    {
      where: "Controller",
      settings: [
        {
          key: "torqueCap",
          name: "Torque",
          value: message`${quantity("torque", 110)}`,
          from: message`in the job`,
          caution: message`More breaks the gearbox.`,
        },
        { key: "ramp", name: "Torque ramp", value: message`0.3 s`, from: usual },
      ],
    },
    { where: "Charger", settings: [{ key: "end", name: "Ends at", value: message`109 V`, from: usual }] },
    {
      where: "Battery management",
      settings: [{ key: "low", name: "Lowest cell", value: message`2.8 V`, from: usual }],
    },
  ],
};

function paper(changes: Partial<SettingsPaperInput> = {}) {
  const job = { title: "A car", client: "", workshop: "", isInvented: true };
  return settingsPaper(document, { job, sheet, units: "metric", ...changes });
}

it("has the controller on a page of its own, and the rest on the next, nothing left out", () => {
  const groups = [...paper().querySelectorAll(".page")].map((page) =>
    [...page.querySelectorAll(".is-group th")].map(({ textContent }) => textContent),
  );
  expect(groups).toEqual([["Controller"], ["Charger", "Battery management"]]);
  expect(paper().querySelectorAll("tbody tr:not(.is-group)")).toHaveLength(4);
});

it("has for each setting three empty boxes, where what was set is written by hand", () => {
  for (const row of paper().querySelectorAll("tbody tr:not(.is-group)")) {
    expect([...row.querySelectorAll(".box")].map(({ textContent }) => textContent)).toEqual(["", "", ""]);
  }
});

it("says the usual in one word beside its row, and what it means at the foot of every page", () => {
  const [first, second] = paper().querySelectorAll(".page");
  expect(first?.querySelectorAll(".from")[1]?.textContent).toBe(" usual");
  for (const page of [first, second]) {
    expect(page?.querySelector(".foot")?.textContent).toContain("“Usual”: common practice, no source.");
  }
});

it("has a caution beside its value, and a stop before all of it", () => {
  expect(paper().querySelector(".beware")?.textContent).toBe("! More breaks the gearbox.");
  expect(paper().querySelector(".verdict")).toBeNull();
  const stopped = paper({ stop: message`Full, this pack has too many volts.` });
  expect(stopped.querySelector(".verdict")?.textContent).toBe("Stop. Full, this pack has too many volts.");
});

it("is in the workshop's units", () => {
  // 110 Nm are 81.1 lb ft.
  expect(paper({ units: "british" }).querySelector("tbody b")?.textContent?.replace(/\s/g, " ")).toMatch(
    /^81(\.\d)? lb ft$/,
  );
});
