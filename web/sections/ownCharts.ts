import { anyChannel } from "../charts/anyChannel.ts";
import { channelNamed } from "../charts/parts/axes/channelQuantities.ts";
import { ownChartsForm } from "../forms/charts/ownChartsForm.ts";
import { defineSection } from "./parts/section.ts";

/** What else does the workshop want to see of the drive? */
export default defineSection({
  name: "ownCharts",
  title: "Own charts",
  question: "What else do you want to see of this drive, against what?",
  given: ownChartsForm,
  inputs: ["runs", "charts", "packIndex"],
  compute: ({ runs, charts, packIndex }) => ({
    chosen: packIndex,
    title: runs.trace.title,
    charts: charts.map((chart) => ({
      ...chart,
      words:
        chart.caption.trim() ||
        `${channelNamed(chart.y).name} against ${channelNamed(chart.x).name.toLowerCase()}${
          chart.colour ? `, coloured by ${channelNamed(chart.colour).name.toLowerCase()}` : ""
        }`,
      drawn: runs.candidates.flatMap(({ name, channels }, index) =>
        channels && (chart.packs.length === 0 || chart.packs.includes(name)) ? [{ name, index, channels }] : [],
      ),
    })),
  }),
  plot: ({ charts, chosen }, drawing) =>
    charts.map(({ words, drawn, x, y, colour }) => ({
      // By what it shows, so that it keeps its name when another chart goes.
      name: `${y}Against${firstUpper(x)}${colour ? `By${firstUpper(colour)}` : ""}`,
      caption: words,
      chart: anyChannel({ packs: drawn, x, y, ...(colour && { colour }) }, { ...drawing, chosen }),
    })),
  sentence: ({ charts, title }) => {
    if (charts.length === 0)
      return "No chart of your own is made yet: any channel of the drive can be drawn against any other.";
    return `${charts.length === 1 ? "One chart" : `${charts.length} charts`} of your own, drawn from the same drive: ${title}.`;
  },
  summary: ({ charts }) => (charts.length === 0 ? "none" : String(charts.length)),
});

function firstUpper(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
