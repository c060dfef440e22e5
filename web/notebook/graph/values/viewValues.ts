import { computed } from "@preact/signals-core";
import { logInView } from "../../../log/logInView.ts";
import type { View } from "../../../sections/parts/values.ts";
import type { Definition } from "../graph.ts";

/** What is chosen and open on the page, and what lies beside the job. */
export function viewValues(view: View): Definition[] {
  return [
    { name: "units", from: view.units },
    { name: "roadId", from: view.roadId },
    { name: "along", from: view.along },
    { name: "charts", from: view.charts },
    { name: "chosenPack", from: view.packIndex },
    { name: "broughtMap", from: computed(() => view.staging.map.value) },
    { name: "logInView", from: logInView(() => view.staging.log) },
    { name: "measuredOutcome", from: computed(() => view.staging.measured.outcome.value) },
    { name: "areUnknownsOpen", from: computed(() => view.openWorkings.value.has("whatIsOpen")) },
    { name: "isHeatOpen", from: computed(() => view.openWorkings.value.has("heat")) },
    { name: "areConditionsOpen", from: computed(() => view.openWorkings.value.has("conditions")) },
    { name: "isSizingOpen", from: computed(() => view.openWorkings.value.has("smallestPack")) },
    { name: "isWeekOpen", from: computed(() => view.openWorkings.value.has("theWeek")) },
    { name: "keptTrack", from: computed(() => view.staging.log.kept.value) },
  ];
}
