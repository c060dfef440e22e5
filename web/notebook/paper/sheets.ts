import { sheetStyle } from "../../sheet/sheetStyle.ts";

export { settingsSheet } from "../../../sim/index.ts";
export { clientSheet } from "../../sheet/clientSheet.ts";
export { handoverPage } from "../../sheet/handoverPage.ts";
export { serviceCard } from "../../sheet/serviceCard.ts";
export { settingsPaper } from "../../sheet/settingsPaper.ts";
export { sheetContent } from "../../sheet/sheetContent.ts";
export { visitForm } from "../../sheet/visitForm.ts";
export { predictionView } from "./predictionView.ts";

/** A paper with its own look and margins beside it: they go with it when it goes. */
export function inStyle(document: Document, paper: HTMLElement): HTMLElement {
  const whole = document.createElement("div");
  const style = document.createElement("style");
  style.textContent = sheetStyle;
  whole.append(style, paper);
  return whole;
}
