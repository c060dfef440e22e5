import { html, type TemplateResult } from "lit-html";
import type { Job } from "../../../shared/job/job.ts";
import type { Form } from "../../fields/fieldContext.ts";

type Shifting = Job["driveline"]["shifting"];

/** Which gears are used: one for everything, or several changed at given road speeds. */
export function shiftingChoice(form: Form): TemplateResult {
  const { shifting, gears } = form.job.driveline;
  const put = (what: string, next: Shifting) =>
    form.jobEditor.change(what, ({ job, drafts }) => ({
      job: { ...job, driveline: { ...job.driveline, shifting: next } },
      drafts,
    }));
  const used = shifting.kind === "fixed" ? [shifting.gear] : shifting.gears;
  const toggle = (name: string, isOn: boolean) => {
    const next = gears.map((gear) => gear.name).filter((each) => (each === name ? isOn : used.includes(each)));
    if (next.length === 0) return;
    put(
      "Gears used",
      next.length === 1
        ? { kind: "fixed", gear: next[0] }
        : { kind: "bySpeed", gears: next, up_kmh: speedsFor(next.length, shifting) },
    );
  };
  return html`<fieldset class="choices">
      <legend>Gears used</legend>
      ${gears.map(({ name }, i) => {
        const id = `field-gear-used-${i}`;
        const isUsed = used.includes(name);
        return html`<span class="choice">
          <input
            id=${id}
            type="checkbox"
            .checked=${isUsed}
            ?disabled=${isUsed && used.length === 1}
            @change=${(event: Event) => toggle(name, (event.target as HTMLInputElement).checked)}
          />
          <label for=${id}>${name}</label>
        </span>`;
      })}
    </fieldset>
    ${
      shifting.kind === "bySpeed" ? form.fields(...shifting.up_kmh.map((_, i) => `driveline.shifting.up_kmh.${i}`)) : ""
    }`;
}

/** Change-up speeds for so many gears: those known, and beyond them 20 km/h more each. Assumed, to be typed over. */
function speedsFor(count: number, before: Shifting): number[] {
  const known = before.kind === "bySpeed" ? before.up_kmh : [];
  const speeds = known.slice(0, count - 1);
  while (speeds.length < count - 1) speeds.push((speeds.at(-1) ?? 10) + 20);
  return speeds;
}
