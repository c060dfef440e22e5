import { html, nothing, type TemplateResult } from "lit-html";
import { live } from "lit-html/directives/live.js";
import { writeQuantity } from "../../../shared/quantity/writeQuantity.ts";
import { M_PER_KM } from "../../../shared/units.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { viewChoice } from "../../fields/viewChoice.ts";
import { tooLong, wordsField } from "../../fields/wordsField.ts";
import { logOrigin } from "../../log/driveLog.ts";
import { longestDay, medianDay, pieceChoices } from "../../log/logPieces.ts";
import { CUT_m } from "../../log/logStaging.ts";
import { durationWords } from "../../log/readingWords.ts";
import { drivenDays_km, logDaysAWeek, withLogDays } from "../../log/takeDays.ts";
import { freeRoadId, namedRoad, withRoad } from "../../log/takeRoad.ts";
import type { Drive } from "../../worker/roads/roadsApi.ts";

const ID = "log-road";
/** Longer names would cover the map they stand on. */
const LONGEST_PLACE = 40;

/** Trips and days of a cleaned log: how they are split, what places are called, and the part that becomes a road. */
export function logRoadForm(form: Form, drive: Drive, isOpen: boolean): TemplateResult {
  const { log } = form.view.staging;
  const units = form.view.units.value;
  const choices = pieceChoices(drive, units);
  const chosen = choices.find(({ key }) => key === log.piece.value) ?? choices[0];
  const title = log.texts.value["title"] ?? chosen.title;
  const tooLongTitle = tooLong(title, 200);
  const take = async () => {
    const made = await log.make((roads) => roads.roadOf(chosen.key, title.trim() === "" ? chosen.title : title));
    if (!made) return;
    const id = freeRoadId(form.jobEditor.job.value, "log");
    const origin = logOrigin(drive);
    const road = namedRoad(made, id);
    if (!attempt(form, ID, `Road from a log: ${road.title}`, (state) => withRoad(state, road, origin), [road])) return;
    const { track, tripRows } =
      log.view.value?.piece === chosen.key ? log.view.value : { track: undefined, tripRows: [] };
    await log.keep.track(id, track && { ...track, tripRows });
    log.done.value = `“${made.road.title}” is now a road of this job, and the one that is driven.`;
  };
  return html`${splitting(form, drive)} ${places(form, drive)}
    <div class="fields">
      ${viewChoice("log-piece", "Part of the log to show and to drive", choices, chosen.key, (key) => {
        const { title: _title, ...others } = log.texts.value;
        log.texts.value = others;
        void log.choose(key);
      })}
      ${wordsField({
        id: "log-title",
        label: "What the road is called",
        text: title,
        isPlain: true,
        problem: tooLongTitle,
        write: (typed) => {
          log.texts.value = { ...log.texts.value, title: typed };
        },
      })}
    </div>
    ${
      drive.hasPositions
        ? html`<p class="choice">
            <input
              id="log-cut"
              type="checkbox"
              .checked=${live(log.cutsEnds.value)}
              @change=${(event: Event) => {
                log.cutsEnds.value = (event.target as HTMLInputElement).checked;
              }}
            />
            <label for="log-cut">Maps leave out the first and last ${writeQuantity("elevation", CUT_m, form.view.units.value)} of every trip</label>
          </p>`
        : nothing
    }
    <p class="buttons">
      <button type="button" class="main" ?disabled=${isOpen || tooLongTitle !== undefined} @click=${take}>Make it a road of this job</button>
      ${dayButtons(form, drive)}
    </p>
    ${isOpen ? html`<p class="to-mend">First say above what the log leaves open.</p>` : nothing} ${refusal(form, ID)}`;
}

function splitting(form: Form, drive: Drive): TemplateResult {
  const { log } = form.view.staging;
  const { parkedLonger_s } = log.setting.value;
  const stands = [30, 60, 120, 180, 300, 600, 1200, 1800, 3600, 7200];
  const quarters = [20_700, 31_500, 45_900, drive.utcOffset_s]; // 5:45, 8:45 and 12:45 east, and whatever the log has
  const halves = Array.from({ length: 53 }, (_, i) => (i - 24) * 1800);
  const zones = [...new Set([...halves, ...quarters])].sort((a, b) => a - b);
  const isDated = drive.days.some(({ date }) => !date.startsWith("1970-"));
  return html`<div class="fields">
    ${viewChoice(
      "log-parked",
      "A stop ends a trip when parked longer than",
      stands.map((each_s) => ({ key: String(each_s), words: each_s < 60 ? `${each_s} s` : `${each_s / 60} min` })),
      String(parkedLonger_s),
      (key) => void log.change({ parkedLonger_s: Number(key) }),
    )}
    ${
      isDated
        ? viewChoice(
            "log-zone",
            `Local time (${drive.offsetFrom})`,
            zones.map((zone_s) => ({ key: String(zone_s), words: zoneWords(zone_s) })),
            String(drive.utcOffset_s),
            (key) => void log.change({ utcOffset_s: Number(key) }),
          )
        : nothing
    }
  </div>`;
}

function zoneWords(zone_s: number): string {
  const minutes = Math.abs(zone_s) / 60;
  const clock = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  return zone_s === 0 ? "as written (UTC)" : `UTC ${zone_s < 0 ? "−" : "+"} ${clock} h`;
}

function places(form: Form, drive: Drive): TemplateResult | typeof nothing {
  const { labels } = form.view.staging.log;
  if (drive.places.length === 0) return nothing;
  return html`<fieldset class="log-places">
    <legend>Where it parked; what the places are called is a guess</legend>
    <div class="fields">
      ${drive.places.slice(0, 8).map(({ label, parked_s, times }, i) => {
        const text = labels.value[i] ?? label;
        return wordsField({
          id: `log-place-${i}`,
          label: `${times} ${times === 1 ? "time" : "times"}, ${durationWords(parked_s)} in all`,
          text,
          problem: tooLong(text, LONGEST_PLACE),
          isPlain: true,
          write: (typed) => {
            labels.value = { ...labels.value, [i]: typed };
          },
        });
      })}
    </div>
  </fieldset>`;
}

/** The days of the log as the days that packs are judged by. */
function dayButtons(form: Form, drive: Drive): TemplateResult | typeof nothing {
  const units = form.view.units.value;
  const [usual, longest] = [medianDay(drive), longestDay(drive)];
  if (!usual || !longest) return nothing;
  const km = (distance_m: number) => Math.round(distance_m / 100) / 10;
  const format = (distance_m: number) => writeQuantity("distance", distance_m / M_PER_KM, units);
  const put = (path: string, distance_m: number, what: string) => {
    form.jobEditor.edit(path, "", km(distance_m), { what, from: "measured" });
    form.jobEditor.settle();
    form.view.staging.log.done.value = `${what}: ${format(distance_m)}, from the log.`;
  };
  const isOneDay = drive.days.filter((day) => day.trips > 0).length === 1;
  const { length } = drivenDays_km(drive);
  const week = logDaysAWeek(drive);
  const takeAll = () => {
    if (attempt(form, ID, `${length} days of a log in the year`, (state) => withLogDays(state, drive)))
      form.view.staging.log.done.value = `The year’s driven days are drawn from ${length} days of the log${week === undefined ? "" : `, ${week} driven ${week === 1 ? "day" : "days"} a week by its dates`}. Undo goes back to what was before.`;
  };
  return html`<button type="button" @click=${() => put("usualDay_km", usual.distance_m, "Usual day")}>
      Take ${isOneDay ? "this day" : "the middle day"}, ${format(usual.distance_m)}, as the usual day
    </button>
    ${
      isOneDay
        ? nothing
        : html`<button type="button" @click=${() => put("longestDay_km", longest.distance_m, "Longest day")}>
            Take ${format(longest.distance_m)} as the longest day
          </button>
          <button type="button" @click=${takeAll}>Draw the year's days from these ${length}</button>`
    }`;
}
