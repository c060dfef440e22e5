import { html, type TemplateResult } from "lit-html";
import { drivenRoad } from "../../../shared/job/drivenRoad.ts";
import type { Job } from "../../../shared/job/job.ts";
import { withPath } from "../../../shared/job/path.ts";
import type { WeekDay, WeekTrip } from "../../../shared/job/schema/week.ts";
import { weekdayNames, weekdays } from "../../../shared/job/weekdays.ts";
import type { EditorState } from "../../editing/jobEditor.ts";
import { withEntry, withoutEntry } from "../../editing/listEdits.ts";
import { attempt, refusal } from "../../fields/attempt.ts";
import type { Form } from "../../fields/fieldContext.ts";
import { listTable } from "../../fields/listTable.ts";
import { optionalGroup } from "../../fields/optionalGroup.ts";
import { viewChoice } from "../../fields/viewChoice.ts";

const DAYS = "week.days";
const MOST_DAYS = 7;
const MOST_TRIPS = 12;
/** The choice of no place. */
const NOWHERE = "";

/** The week by the clock: its days, and of each a table of trips with what is charged after them. */
export function weekForm(form: Form): TemplateResult {
  return optionalGroup(
    form,
    {
      path: "week",
      name: "week by the clock",
      without: "No week is entered: trips by the clock, and where the car is charged between them.",
      start: (job) => ({ days: [workingDays(job)] }),
    },
    () => {
      const days = form.job.week?.days ?? [];
      const next = nextDay(days);
      return html`${days.map((day, i) => dayForm(form, day, i))}
        <p class="buttons">${
          days.length < MOST_DAYS && next
            ? html`<button type="button" @click=${() => change(form, "one day more", (state) => withEntry(state, DAYS, days.length, next))}>Add a day</button>`
            : html`<span class="aside">Every day of the week is there.</span>`
        }</p>
        ${refusal(form, DAYS)}`;
    },
  );
}

function dayForm(form: Form, day: WeekDay, index: number): TemplateResult {
  const path = `${DAYS}.${index}`;
  const name = dayName(day);
  const trips = `${path}.trips`;
  const tripName = (i: number) => `${day.trips[i]?.leaves ?? ""}, ${name}`;
  return html`<fieldset class="group" id="week-day-${index}">
    <legend>${name}</legend>
    ${form.fields(`${path}.from`, `${path}.to`, `${path}.name`)}
    ${listTable(form, {
      path: trips,
      caption: `Trips of ${name}.`,
      entry: "trip",
      rowName: tripName,
      columns: [
        { key: "leaves", head: "Leaves" },
        { key: "arrives", head: "Arrives" },
        { key: "road", head: "Road" },
        { key: "way", head: "Way" },
        { key: "distance_km", head: "Distance" },
        { key: "parkedAt", head: "Charged at" },
      ],
      most: MOST_TRIPS,
      add: (state) => withEntry(state, trips, day.trips.length, tripAfter(form.job, day)),
      remove: (state, i) => withoutEntry(state, trips, i),
      cell: (i, key) => {
        const trip = day.trips[i];
        if (key === "road") return roadChoice(form, `${trips}.${i}.road`, tripName(i), trip.road);
        if (key === "parkedAt") return placeChoice(form, `${trips}.${i}`, tripName(i), trip);
        return undefined;
      },
      below: (i) => pluggedForm(form, `${trips}.${i}`, tripName(i), day.trips[i]),
    })}
    <p class="buttons"><button type="button" @click=${() => change(form, `${name} removed`, (state) => withoutEntry(state, DAYS, index))}>Remove ${name}</button></p>
  </fieldset>`;
}

/** From when to when it charges, where that is not all of the time parked. */
function pluggedForm(form: Form, path: string, name: string, trip: WeekTrip): TemplateResult {
  if (trip.parkedAt === undefined) return html``;
  return form.fold(
    "Times of charging",
    optionalGroup(
      form,
      {
        path: `${path}.plugged`,
        name: `times of charging (${name})`,
        without: "It charges from its arrival until it leaves again or is full.",
        start: () => ({ from: "23:30", to: "5:30" }),
      },
      () => form.fields(`${path}.plugged.from`, `${path}.plugged.to`),
    ),
    path,
  );
}

function roadChoice(form: Form, path: string, name: string, chosen: string): TemplateResult {
  const choices = form.job.roads.map(({ id, title }) => ({ key: id, words: title }));
  const choose = (id: string) =>
    attempt(form, DAYS, `road of ${name}`, (state) => ({ ...state, job: withPath(state.job, path, id) }));
  return viewChoice(idOf(path), `Road of ${name}`, choices, chosen, choose);
}

function placeChoice(form: Form, path: string, name: string, { parkedAt = NOWHERE }: WeekTrip): TemplateResult {
  const choices = [
    { key: NOWHERE, words: "not charged" },
    ...form.job.supplies.map((supply) => ({ key: supply.name, words: supply.name })),
  ];
  const choose = (place: string) =>
    attempt(form, DAYS, `place after ${name}`, (state) => ({
      ...state,
      job:
        place === NOWHERE
          ? withPath(withPath(state.job, `${path}.plugged`, undefined), `${path}.parkedAt`, undefined)
          : withPath(state.job, `${path}.parkedAt`, place),
    }));
  return viewChoice(idOf(`${path}.parkedAt`), `Charged after ${name}`, choices, parkedAt, choose);
}

function idOf(path: string): string {
  return `choice-${path.replaceAll(".", "-")}`;
}

function change(form: Form, what: string, how: (state: EditorState) => EditorState): void {
  attempt(form, DAYS, what, how);
}

/** What a day is called here: Monday, or Monday to Friday. */
function dayName({ from, to }: Pick<WeekDay, "from" | "to">): string {
  return from === to ? weekdayNames[from] : `${weekdayNames[from]} to ${weekdayNames[to]}`;
}

/** Out in the morning and back in the evening, over the road of the job; charged at its first place. */
function workingDays(job: Job): WeekDay {
  const { id: road } = drivenRoad(job);
  const [place] = job.supplies;
  return {
    from: "monday",
    to: "friday",
    trips: [
      { leaves: "8:00", arrives: "9:00", road, way: "once" },
      { leaves: "17:00", arrives: "18:00", road, way: "back", ...(place && { parkedAt: place.name }) },
    ],
  };
}

/** The first weekday that no day stands for, without trips. */
function nextDay(days: readonly WeekDay[]): WeekDay | undefined {
  const taken = (place: number) =>
    days.some(({ from, to }) => weekdays.indexOf(from) <= place && place <= weekdays.indexOf(to));
  const free = weekdays.find((_, place) => !taken(place));
  return free && { from: free, to: free, trips: [] };
}

/** A trip after the last one of a day, an hour after it where the day is long enough. */
function tripAfter(job: Job, { trips }: WeekDay): WeekTrip {
  const last = trips[trips.length - 1];
  const { id: road } = drivenRoad(job);
  if (!last) return { leaves: "8:00", arrives: "9:00", road, way: "once" };
  const hour = Math.min(22, Number(last.arrives.split(":")[0]) + 1);
  return { leaves: `${hour}:00`, arrives: `${hour + 1}:00`, road: last.road, way: "back" };
}
