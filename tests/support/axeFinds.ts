import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { expect } from "vitest";

interface AxeLook {
  /** Parts of the page to look at, by selector; all of it where none is named. */
  readonly within?: readonly string[];
  /** Only this rule. */
  readonly rule?: string;
  /** Rules of these groups instead of the usual ones. */
  readonly tags?: readonly string[];
  /** Rules to leave out, which something else looks after. */
  readonly without?: readonly string[];
  /** Whether figures are taken as one picture each, the contrast of their words being looked at elsewhere. */
  readonly isFigureWhole?: boolean;
  /** How many rules must have found something to look at. */
  readonly least: number;
}

/** What axe finds that keeps somebody from reading or using the page, in words. */
export async function axeFinds(
  page: Page,
  { within = [], rule, tags, without = [], isFigureWhole = false, least }: AxeLook,
): Promise<string[]> {
  // The page has no frames, so axe may do all of it in one go, which takes a third of the time; and of what passes only the
  // count is wanted.
  const axe = new AxeBuilder({ page }).setLegacyMode().options({ resultTypes: ["violations"] });
  for (const part of within) axe.include(part);
  if (rule !== undefined) axe.withRules(rule);
  if (tags !== undefined) axe.withTags([...tags]);
  if (without.length > 0) axe.disableRules([...without]);
  if (isFigureWhole) axe.exclude("svg[role=img] > *");
  const { violations, passes } = await axe.analyze();
  expect(passes.length).toBeGreaterThanOrEqual(least);
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(" | ")}`);
}
