import { expect, it } from "vitest";
import { wordsBeside } from "../../../../web/answer/picture/wordsBeside.ts";

// A pixel a kilometre, from 100 to 500 px, and words of 80 px: 10 px from their band.
const frame = { left_px: 100, right_px: 500, toPixel: (left: number) => left };
const place = (low: number, high: number, ...rings: readonly number[]) =>
  wordsBeside(
    { low, high },
    80,
    rings.map((x_px) => ({ x_px, y_px: 0, r: 2 })),
    frame,
  );

it("words stand at the left of their band where there is room, else at its right", () => {
  expect(place(300, 340)).toEqual({ x: 290, isLeft: true });
  expect(place(150, 200)).toEqual({ x: 210, isLeft: false });
});

it("words give way to rings at their height, by as much as these need and 3 px more", () => {
  // From 285 - 5 on; what is further left or right of the words than that leaves them where they are.
  expect(place(300, 340, 285)).toEqual({ x: 280, isLeft: true });
  expect(place(300, 340, 275, 285)).toEqual({ x: 270, isLeft: true });
  expect(place(300, 340, 200, 296)).toEqual({ x: 290, isLeft: true });
  expect(place(150, 200, 220)).toEqual({ x: 225, isLeft: false });
});

it("words that would come too far from their band, or out of the picture, stay where they are", () => {
  const row = [220, 230, 240, 250, 260, 270, 280, 286];
  expect(place(300, 340, ...row)).toEqual({ x: 290, isLeft: true });
  expect(place(200, 240, 185)).toEqual({ x: 190, isLeft: true });
});

it("words of a band beyond the left edge stand at that edge", () => {
  expect(place(20, 60)).toEqual({ x: 104, isLeft: false });
});
