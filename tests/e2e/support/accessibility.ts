import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** WCAG 2.2 A and AA, and what the tool calls best practice; everything it finds on the page as it stands. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`)).toEqual([]);
}

/** Nothing is cut off or scrolls sideways: WCAG 2.2, 1.4.10, at 320 CSS pixels. */
export async function expectReflow(page: Page): Promise<void> {
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
}

/** At least 24 by 24 CSS pixels for everything to press that does not stand in a line of text: WCAG 2.2, 2.5.8. */
export async function expectTargetSize(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page }).withRules(["target-size"]).analyze();
  expect(violations).toEqual([]);
}
