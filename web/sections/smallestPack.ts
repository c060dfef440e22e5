import { message, messageIn, whole } from "../../shared/quantity/message.ts";
import { moneyBetween } from "../../shared/quantity/money.ts";
import { writeQuantity } from "../../shared/quantity/writeQuantity.ts";
import { packsBesideWords } from "../../sim/index.ts";
import { sizingForm } from "../forms/pack/sizingForm.ts";
import { newCandidate } from "./parts/newCandidate.ts";
import { defineSection } from "./parts/section.ts";

const MOST_PACKS = 12;

/** Which is the smallest pack of these modules that will do, and why not a smaller one? */
export default defineSection({
  name: "smallestPack",
  title: "Smallest pack",
  question: "Of all layouts of the module, which fit this car, and which is the smallest that will do?",
  given: sizingForm,
  fields: ["sizing"],
  inputs: ["packStudy", "besideDays", "job", "units"],
  compute: ({ packStudy, besideDays, job, units }) => {
    const { rows, sentences, smallest, fitting, beside } = packStudy;
    const { currency } = job;
    const isPriced = beside.some(({ cost }) => cost);
    return {
      fits: rows.flatMap(({ name, layout, out }) => {
        if (!layout || out) return [];
        const { full_V, nominal_V, loaded_V, string_A, nominal_kWh, mass_kg } = layout.figures;
        return [
          [
            name,
            ...[full_V, nominal_V, loaded_V].map((value_V) => writeQuantity("voltage", value_V, units)),
            writeQuantity("current", string_A.tenSeconds, units),
            writeQuantity("energy", nominal_kWh, units),
            writeQuantity("mass", mass_kg, units),
          ],
        ];
      }),
      out: rows.flatMap(({ name, out }) => (out ? [[name, messageIn(out.reason, units)]] : [])),
      isPriced,
      beside: beside.map(({ roles, pack, nominal_kWh, mass_kg, range_km, left_km, cost }, i) => [
        pack.name,
        roles.join(", "),
        writeQuantity("energy", nominal_kWh, units),
        messageIn(message`${whole("mass", mass_kg, "nearest")}`, units),
        messageIn(message`${whole("distance", range_km)}`, units),
        left_km === undefined
          ? "–"
          : left_km < 0
            ? messageIn(message`${whole("distance", -left_km, "up")} short`, units)
            : messageIn(message`${whole("distance", left_km)}`, units),
        failed(besideDays?.[i]?.new, besideDays?.[i]?.driven),
        failed(besideDays?.[i]?.tenYears, besideDays?.[i]?.driven),
        ...(isPriced ? [cost ? moneyBetween(cost, currency ?? "", 2) : "–"] : []),
      ]),
      words: [...sentences, ...packsBesideWords(beside, besideDays, currency)].map((sentence) =>
        messageIn(sentence, units),
      ),
      smallest,
      count: fitting.length,
      module: job.module.name,
      newOnes:
        job.packs.length >= MOST_PACKS ? [] : fitting.filter(({ pack }) => !isThere(job.packs, pack)).slice(0, 8),
    };
  },
  plot: ({ fits, out, module, beside, isPriced }) => [
    ...(beside.length > 0
      ? [
          {
            caption: "The smallest pack that will do, its neighbours, and what the client asked for",
            columns: [
              { title: "Pack" },
              { title: "Which is", isText: true },
              { title: "On the label" },
              { title: "With boxes" },
              { title: "Range when new" },
              { title: "Left of the day asked for" },
              { title: "Not home, new" },
              { title: "Not home, ten years" },
              ...(isPriced ? [{ title: "Cells" }] : []),
            ],
            rows: beside,
            note: "Left: of the day and in the condition asked for. Not home: on driving days of the year, each begun charged.",
          },
        ]
      : []),
    ...(fits.length > 0
      ? [
          {
            caption: `Layouts of ${module} that fit: modules in series, strings in parallel`,
            columns: [
              { title: "Layout" },
              { title: "Full" },
              { title: "On average" },
              { title: "Nearly empty, under load" },
              { title: "Each string, for 10 s" },
              { title: "On the label" },
              { title: "With boxes" },
            ],
            rows: fits,
            note: "Load and current are what this road asks with the largest pack of the job.",
          },
        ]
      : []),
    ...(out.length > 0
      ? [
          {
            caption: `Layouts of ${module} that are ruled out, and why`,
            columns: [{ title: "Layout" }, { title: "Why not", isText: true }],
            rows: out,
            note: "Of layouts ruled out by the same there is one line, with the reason of the one nearest to fitting.",
          },
        ]
      : []),
  ],
  sentence: ({ words }) => words.join(" "),
  inShort: ({ words }) => words[0] ?? "",
  summary: ({ smallest, count }) =>
    smallest === undefined ? `none of ${count} that fit does what is asked` : `${smallest} of ${count} that fit`,
  offers: ({ newOnes }) =>
    newOnes.map(({ pack, nominal_kWh }) => ({
      words: `Make ${pack.whole ? pack.name : `${pack.name} (${nominal_kWh.toFixed(1)} kWh)`} a candidate`,
      done: `${pack.name} made a candidate`,
      change: (state) => newCandidate(state, pack),
    })),
});

function isThere(packs: readonly Candidate[], { seriesModules, parallelModules, whole }: Candidate): boolean {
  return packs.some(
    (one) =>
      one.seriesModules === seriesModules &&
      one.parallelModules === parallelModules &&
      one.whole?.energy_kWh === whole?.energy_kWh,
  );
}

function failed(days: number | undefined, driven = 0): string {
  return days === undefined ? "–" : `${days} of ${driven}`;
}

interface Candidate {
  readonly seriesModules: number;
  readonly parallelModules: number;
  readonly whole?: { readonly energy_kWh: number } | undefined;
}
