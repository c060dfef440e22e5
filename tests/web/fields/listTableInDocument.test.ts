import { beforeEach, expect, it } from "vitest";
import { withEntry, withoutEntry } from "../../../web/editing/listEdits.ts";
import { listTable } from "../../../web/fields/listTable.ts";
import { demoJob } from "../../support/demoJob.ts";
import { formPage } from "../../support/formPage.ts";

const PATH = "accessories.items";
const ours = { name: "ours", power_W: 50, duty_frac: 1, supply: "12V" as const };

/** The demo's lights, wipers, blower and demister as a table of two columns, at most five and at least three rows. */
function page() {
  const shown = formPage(demoJob(), (form) =>
    listTable(form, {
      path: PATH,
      caption: "What draws.",
      entry: "row",
      rowName: (i) => form.job.accessories.items[i].name,
      columns: [
        { key: "name", head: "What" },
        { key: "power_W", head: "Power" },
      ],
      most: 5,
      least: 3,
      add: (state) => withEntry(state, PATH, state.job.accessories.items.length, ours),
      copy: (state, i) => withEntry(state, PATH, i + 1, state.job.accessories.items[i], i),
      remove: (state, i) => withoutEntry(state, PATH, i),
    }),
  );
  const cell = (row: number, key: string) => `#field-accessories-items-${row}-${key}`;
  return {
    ...shown,
    cell,
    items: () => shown.job().accessories.items.map(({ name, power_W }) => `${name} ${power_W}`),
    paste(selector: string, text: string) {
      const event = new Event("paste", { bubbles: true, cancelable: true });
      shown.at(selector).dispatchEvent(Object.assign(event, { clipboardData: { getData: () => text } }));
    },
    key(selector: string, key: string, more: object = {}) {
      shown.at(selector).focus();
      const event = new Event("keydown", { bubbles: true, cancelable: true });
      shown.at(selector).dispatchEvent(Object.assign(event, { key, ...more }));
      return document.activeElement?.id;
    },
  };
}

let at: ReturnType<typeof page>;
beforeEach(() => {
  at = page();
});

it("adds, copies and removes rows between the fewest and the most that the list may have", () => {
  at.press(/^Add a row$/);
  expect(at.items().at(-1)).toBe("ours 50");
  // Five now: no more can be added or copied.
  expect(at.said(".buttons")).toBe("5 at most.");
  expect(at.buttons().filter((words) => words.startsWith("Copy"))).toEqual([]);
  at.press(/^Remove wipers$/);
  at.press(/^Remove ours$/);
  expect(at.items()).toEqual(["lights 120", "blower 90", "demister 250"]);
  expect(at.buttons().filter((words) => words.startsWith("Remove"))).toEqual([]);
  at.press(/^Copy blower$/);
  expect(at.items()).toEqual(["lights 120", "blower 90", "blower 90", "demister 250"]);
});

it("goes to the next cell by Enter and arrow keys, and stays where there is none", () => {
  const id = (row: number, key: string) => at.cell(row, key).slice(1);
  expect(at.key(at.cell(0, "power_W"), "Enter")).toBe(id(1, "power_W"));
  expect(at.key(at.cell(1, "power_W"), "Enter", { shiftKey: true })).toBe(id(0, "power_W"));
  expect(at.key(at.cell(1, "power_W"), "ArrowLeft")).toBe(id(1, "name"));
  expect(at.key(at.cell(1, "name"), "ArrowUp")).toBe(id(0, "name"));
  expect(at.key(at.cell(0, "name"), "ArrowUp")).toBe(id(0, "name"));
  // With Ctrl or Alt a key is the browser's.
  expect(at.key(at.cell(0, "name"), "ArrowDown", { altKey: true })).toBe(id(0, "name"));
});

it("leaves the arrow keys to the caret in a cell that is edited, and puts back what stood there by Escape", () => {
  const power = at.cell(0, "power_W");
  at.at(power).focus();
  at.type(power, "135");
  expect(at.key(power, "ArrowDown")).toBe(power.slice(1));
  expect(at.items()[0]).toBe("lights 135");
  at.key(power, "Escape");
  expect(at.items()[0]).toBe("lights 120");
  expect(at.at(power).value).toBe("120");
  expect(at.key(power, "ArrowDown")).toBe(at.cell(1, "power_W").slice(1));
});

it("fills rows by what is pasted from the cell on, makes more up to the most, and is undone by one step", () => {
  const before = at.items();
  at.paste(at.cell(3, "name"), "radio\t15\nheater\t700\none too many\t1");
  expect(at.items()).toEqual([...before.slice(0, 3), "radio 15", "heater 700"]);
  at.jobEditor.undo();
  expect(at.items()).toEqual(before);
});

it("puts pasted columns where their heads say, in the unit of the head", () => {
  at.paste(at.cell(0, "name"), "Power (kW)\tWhat\n0.2\tlamps");
  expect(at.items()[0]).toBe("lamps 200");
});

it("leaves a single pasted word to the browser, which puts it at the caret", () => {
  const before = at.items();
  at.paste(at.cell(0, "name"), "lamps");
  expect(at.items()).toEqual(before);
});
