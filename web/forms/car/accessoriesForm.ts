import { html, nothing, type TemplateResult } from "lit-html";
import { accessories } from "../../../shared/parts/accessories.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";
import { partPicker } from "../parts/partPicker.ts";

const MOST_ITEMS = 30;
const PATH = "accessories.items";

/** What draws on the pack beside the drive: the always-on load, and items that are on for a share of the drive. */
export function accessoriesForm(form: Form): TemplateResult {
  const { items } = form.job.accessories;
  const ours = { name: "something of our own", power_W: 50, duty_frac: 1, supply: "12V" as const };
  return html`${form.fields(
    "accessories.standing_W",
    "accessories.dcdcEfficiency_frac",
    "accessories.dcdcMin_V",
    "accessories.dcdcMax_V",
  )}
  ${listTable(form, {
    path: PATH,
    caption: "Lights, heater, 12 V.",
    entry: "row",
    rowName: (i) => items[i].name,
    columns: [
      { key: "name", head: "What" },
      { key: "power_W", head: "Power" },
      { key: "duty_frac", head: "On for (% of the drive)" },
      { key: "winterDuty_frac", head: "On for, in winter" },
      { key: "supply", head: "Fed from" },
    ],
    most: MOST_ITEMS,
    add: (state) => withEntry(state, PATH, state.job.accessories.items.length, ours),
    copy: (state, i) => withEntry(state, PATH, i + 1, state.job.accessories.items[i], i),
    remove: (state, i) => withoutEntry(state, PATH, i),
  })}
  ${
    items.length < MOST_ITEMS
      ? partPicker(form, {
          id: "accessory",
          label: "A usual accessory to add",
          parts: accessories,
          path: PATH,
          into: "list",
        })
      : nothing
  }`;
}
