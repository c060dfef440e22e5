import { describe, expect, it } from "vitest";
import { moneyBetween, roundedEnds, writeMoney } from "../../../shared/quantity/money.ts";
import { expectWrittenOnce } from "../../support/writtenOnce.ts";

const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, " ");

describe("an amount of money", () => {
  it.each([
    [12_345, "GBP", "12 300 GBP"],
    [9876, "EUR", "9880 EUR"],
    [9999, "", "10 000"],
    [1_234_567, "kr", "1 230 000 kr"],
    [2.347, "£", "£2.35"],
    [0.004, "£", "£0"],
    [0, "£", "£0"],
    [-412.4, "£", "-£412"],
    [-412.4, "GBP", "-412 GBP"],
    [Number.NaN, "GBP", "-"],
  ])("%d in %s is %s", (amount, currency, written) => {
    expect(plain(writeMoney(amount, currency))).toBe(written);
  });

  it("keeps a currency of any text as it is written", () => {
    expect(plain(writeMoney(100, "<b>x</b>"))).toBe("100 <b>x</b>");
  });
});

describe("a band of money", () => {
  it("is as fine as its larger end, with the currency once", () => {
    expect(plain(moneyBetween({ low: -34.4, high: 10_234 }, "EUR"))).toBe("0 to 10 200 EUR");
    expect(plain(moneyBetween({ low: 6277, high: 12_480 }, "£"))).toBe("£6300 to 12 500");
    expect(roundedEnds({ low: -34.4, high: 10_234 })).toEqual({ low: 0, high: 10_200 });
  });
  it("is one amount where both ends are written alike", () => {
    expect(plain(moneyBetween({ low: 1201, high: 1204 }, "GBP"))).toBe("1200 GBP");
  });
});

it("no amount is written in two ways where a figure more or less begins", () => {
  const write = (amount: number) => writeMoney(amount, "EUR").replace(/\u202f/g, "");
  expectWrittenOnce(write, [0.1, 1, 10, 100, 1000, 10_000, 1e6], { EUR: 1 });
});
