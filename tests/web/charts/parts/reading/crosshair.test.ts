import { JSDOM } from "jsdom";
import { describe, expect, it } from "vitest";
import { commonPosition } from "../../../../../web/charts/parts/reading/commonPosition.ts";
import { readableFigure } from "../../../../../web/charts/parts/reading/crosshair.ts";
import { figures } from "../../../../support/inventedFigures.ts";

function page() {
  const { window } = new JSDOM("<!doctype html><body></body>");
  const { document } = window;
  const common = commonPosition();
  const figure = (name: string) => {
    const chart = (figures[name] as (typeof figures)[string])({ document, width_px: 720 });
    const readable = readableFigure(chart, name, common);
    document.body.append(readable.element);
    const slider = readable.element.querySelector("input") as HTMLInputElement;
    return {
      ...readable,
      chart,
      slider,
      words: () => readable.element.querySelector("p")?.textContent ?? "",
      cursor: () => chart.svg.querySelector(".figure-cursor"),
      slideTo(step: number) {
        slider.value = String(step);
        slider.dispatchEvent(new window.Event("input"));
      },
    };
  };
  return { window, common, figure };
}

describe("readableFigure", () => {
  it("reads every figure of the same quantity at the same place, and leaves others alone", () => {
    const { figure } = page();
    const [soc, multiples, gears] = [
      figure("chargeAlongRoad"),
      figure("smallMultiples"),
      figure("gearSpeeds"),
    ] as const;
    soc.slideTo(50);
    expect(soc.words()).toMatch(/^4\.12 km: .*Six modules 91\.6 to 91\.7 %\.$/);
    expect(multiples.words()).toMatch(/^4\.12 km: .* A/);
    expect(soc.cursor()?.getAttribute("x1")).toBeTruthy();
    expect(multiples.slider.value).toBe("50");
    expect(gears.words()).toBe("");
    expect(gears.cursor()).toBeNull();
  });

  it("tells the slider's place in words before and after it is moved", () => {
    const { figure } = page();
    const soc = figure("chargeAlongRoad");
    expect(soc.slider.getAttribute("aria-valuetext")).toMatch(/^0 km: .*95 %/);
    soc.slideTo(100);
    expect(soc.slider.getAttribute("aria-valuetext")).toBe(soc.words());
    expect(soc.slider.getAttribute("aria-label")).toContain("chargeAlongRoad");
  });

  it("goes on focus and away on blur", () => {
    const { figure, window } = page();
    const soc = figure("chargeAlongRoad");
    soc.slider.dispatchEvent(new window.Event("focus"));
    expect(soc.cursor()).not.toBeNull();
    soc.slider.dispatchEvent(new window.Event("blur"));
    expect(soc.cursor()).toBeNull();
    expect(soc.words()).toBe("");
  });

  it("goes by Escape, and comes back with the next key", () => {
    const { figure, window } = page();
    const soc = figure("chargeAlongRoad");
    soc.slideTo(50);
    window.document.body.dispatchEvent(new window.KeyboardEvent("keydown", { key: "Escape", bubbles: true }));
    expect(soc.cursor()).toBeNull();
    expect(soc.words()).toBe("");
    soc.slideTo(51);
    expect(soc.cursor()).not.toBeNull();
  });

  it("stays where a finger tapped, and goes when the mouse leaves", () => {
    const { figure, window, common } = page();
    const soc = figure("chargeAlongRoad");
    const box = { left: 0, top: 0, width: 720, height: 300, right: 720, bottom: 300 };
    soc.chart.svg.getBoundingClientRect = () => box as DOMRect;
    const pointer = (name: string, pointerType: string) =>
      soc.chart.svg.dispatchEvent(Object.assign(new window.MouseEvent(name, { clientX: 300 }), { pointerType }));
    pointer("pointerdown", "touch");
    pointer("pointerleave", "touch");
    expect(common.value?.quantity).toBe("distance_m");
    expect(soc.words()).toMatch(/ km: /);
    pointer("pointermove", "mouse");
    pointer("pointerleave", "mouse");
    expect(soc.words()).toBe("");
  });

  it("stays where the keyboard is while the page moves another figure from under the mouse", () => {
    const { figure, window } = page();
    const [soc, gears] = [figure("chargeAlongRoad"), figure("gearSpeeds")] as const;
    soc.slider.focus();
    soc.slideTo(50);
    const left = new window.Event("pointerleave");
    Object.assign(left, { pointerType: "mouse" });
    gears.chart.svg.dispatchEvent(left);
    expect(soc.cursor()).not.toBeNull();
  });

  it("never draws two lines", () => {
    const { figure } = page();
    const soc = figure("chargeAlongRoad");
    for (const step of [10, 20, 30]) soc.slideTo(step);
    expect(soc.chart.svg.querySelectorAll(".figure-cursor").length).toBe(1);
  });

  it("draws a ring on a track", () => {
    const { figure } = page();
    const map = figure("routeMap");
    map.slideTo(40);
    expect(map.cursor()?.tagName).toBe("circle");
  });

  it("keeps the keyboard and the place read while its figure is drawn anew", () => {
    const { figure, window } = page();
    const soc = figure("chargeAlongRoad");
    const anew = figure("chargeAlongRoad").chart;
    soc.slider.focus();
    soc.slideTo(50);
    const before = soc.words();
    soc.show(anew, "after the change");
    expect(window.document.activeElement).toBe(soc.slider);
    expect(soc.words()).toBe(before);
    expect(anew.svg.querySelectorAll(".figure-cursor").length).toBe(1);
    expect([...soc.element.querySelectorAll("svg")]).toEqual([anew.svg]);
    expect(soc.slider.getAttribute("aria-label")).toContain("after the change");
  });

  it("has a slider only while its figure can be read", () => {
    const { figure, window } = page();
    const soc = figure("chargeAlongRoad");
    const { position: _position, ...unread } = figure("chargeAlongRoad").chart;
    soc.show(unread, "nothing driven");
    expect(soc.element.querySelector("input, p")).toBeNull();
    soc.show(figure("chargeAlongRoad").chart, "driven");
    expect([...soc.element.children].map(({ tagName }) => tagName.toLowerCase())).toEqual(["svg", "input", "p"]);
    soc.slider.dispatchEvent(new window.Event("focus"));
    expect(soc.words()).not.toBe("");
  });

  it("follows no longer once it has ended", () => {
    const { figure } = page();
    const [soc, multiples] = [figure("chargeAlongRoad"), figure("smallMultiples")] as const;
    multiples.end();
    soc.slideTo(50);
    expect(multiples.words()).toBe("");
  });
});
