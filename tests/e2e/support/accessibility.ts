import { expect, type Page } from "@playwright/test";
import axe, { type Result, type RunOptions } from "axe-core";

/**
 * What the tool finds against the page as it stands. Each page is one frame, so the tool runs in it and nothing is gathered from
 * others; all that it found to be well, which is most of its answer, stays in the browser.
 */
async function violationsOf(page: Page, options: RunOptions): Promise<Result[]> {
  if (!(await page.evaluate(() => "axe" in window))) await page.evaluate(axe.source);
  const { violations } = await page.evaluate(
    async (asked) => {
      const { violations } = await (Reflect.get(window, "axe") as typeof axe).run(document, asked);
      return { violations };
    },
    { ...options, resultTypes: ["violations"] } satisfies RunOptions,
  );
  return violations;
}

const inWords = (violations: readonly Result[]): string[] =>
  violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);

/**
 * WCAG 2.2 A and AA, and what the tool calls best practice; everything it finds on the page as it stands. Targets of at least
 * 24 by 24 CSS pixels (2.5.8) it looks at only when asked.
 */
export async function expectAccessible(page: Page): Promise<void> {
  const violations = await violationsOf(page, { rules: { "target-size": { enabled: true } } });
  expect(inWords(violations)).toEqual([]);
}

/** Words against their ground, on the dark ground. */
export async function expectContrastInTheDark(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: "dark" });
  const violations = await violationsOf(page, { runOnly: { type: "rule", values: ["color-contrast"] } });
  expect(inWords(violations)).toEqual([]);
}

/** Nothing is cut off or scrolls sideways: WCAG 2.2, 1.4.10, at 320 CSS pixels. Names what reaches too far. */
export async function expectReflow(page: Page): Promise<void> {
  await page.setViewportSize({ width: 320, height: 640 });
  const tooWide = await page.evaluate(() => {
    if (document.documentElement.scrollWidth <= 320) return [];
    const reaches = (one: Element): boolean => one.getBoundingClientRect().right > 320;
    const all = [...document.body.querySelectorAll("*")].filter(reaches);
    return all.filter((one) => ![...one.children].some(reaches)).map((one) => one.outerHTML);
  });
  expect(tooWide).toEqual([]);
}

/** On paper nothing is left that wants to be pressed. */
export async function expectPlainPrint(page: Page): Promise<void> {
  await page.emulateMedia({ media: "print" });
  for (const pressed of ["nav", "button", "[data-screen-only]"])
    await expect(page.locator(pressed).filter({ visible: true })).toHaveCount(0);
}
