import { html, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import type { OwnChart } from "../../../shared/job/schema/chart.ts";
import { type ChannelKey, channelQuantities } from "../../charts/parts/axes/channelQuantities.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { viewChoice } from "../../fields/viewChoice.ts";
import { wordsField } from "../../fields/wordsField.ts";

/** What a new one begins with. */
const firstChart: OwnChart = { x: "time", y: "batteryCurrent", packs: [], caption: "" };

const channels = channelQuantities.map(({ key, name }) => ({ key, words: name }));

/** The charts of one's own: what is drawn against what, for which packs, and the words below. */
export function ownChartsForm(form: Form): TemplateResult {
  const all = form.job.charts;
  const putAll = (charts: OwnChart[]) => {
    form.jobEditor.change("charts of your own", ({ job, drafts }) => ({ job: { ...job, charts }, drafts }));
  };
  const put = (index: number, change: Partial<OwnChart>) =>
    putAll(all.map((each, i) => (i === index ? { ...each, ...change } : each)));
  const isChannel = (key: string): key is ChannelKey => channels.some((each) => each.key === key);
  return html`${all.map(
    (chart, i) => html`<fieldset class="pack">
        <legend class="unseen">Chart ${i + 1}</legend>
        ${form.fields(
          viewChoice(`own-${i}-y`, "Vertical axis", channels, chart.y, (key) => isChannel(key) && put(i, { y: key })),
          viewChoice(`own-${i}-x`, "Horizontal axis", channels, chart.x, (key) => isChannel(key) && put(i, { x: key })),
          viewChoice(
            `own-${i}-colour`,
            "Coloured by",
            [{ key: "", words: "pack" }, ...channels],
            chart.colour ?? "",
            (key) => {
              const { colour: _colour, ...others } = chart;
              putAll(all.map((each, j) => (j === i ? { ...others, ...(isChannel(key) && { colour: key }) } : each)));
            },
          ),
          caption(form, i, chart),
        )}
        <fieldset class="choices">
          <legend>Packs</legend>
          ${form.job.packs.map(({ name }, k) => {
            const isShown = chart.packs.length === 0 || chart.packs.includes(name);
            const toggle = (isOn: boolean) => {
              const names = form.job.packs.map((pack) => pack.name);
              const shown = chart.packs.length === 0 ? names : chart.packs;
              put(i, { packs: names.filter((each) => (each === name ? isOn : shown.includes(each))) });
            };
            return html`<span class="choice">
              <input
                id="own-${i}-pack-${k}"
                type="checkbox"
                .checked=${live(isShown)}
                @change=${(event: Event) => toggle((event.target as HTMLInputElement).checked)}
              />
              <label for="own-${i}-pack-${k}">${name}</label>
            </span>`;
          })}
        </fieldset>
        <p class="buttons">
          <button
            type="button"
            @click=${() => putAll(all.toSpliced(i, 1))}
          >
            Remove<span class="unseen"> chart ${i + 1}</span>
          </button>
        </p>
      </fieldset>`,
  )}
    <p class="buttons">
      <button
        type="button"
        @click=${() => putAll([...all, firstChart])}
      >
        Make a chart
      </button>
    </p>`;
}

/** The words below a chart; what the job cannot keep stays in the field, with the reason. */
function caption({ jobEditor }: Form, index: number, chart: OwnChart): TemplateResult {
  const path = `charts.${index}.caption`;
  const draft = jobEditor.drafts.value[path];
  return wordsField({
    id: `own-${index}-caption`,
    label: "Caption",
    text: draft?.typed ?? chart.caption,
    isPlain: true,
    problem: draft?.problem,
    write: (text) => jobEditor.editPlain(path, text, "the words below a chart"),
    leave: () => jobEditor.settle(),
  });
}
