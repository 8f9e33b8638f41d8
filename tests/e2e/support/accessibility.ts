import { AxeBuilder } from "@axe-core/playwright";
import { expect, type Page } from "@playwright/test";

/** There is one frame, so the page itself is asked; a page beside it for each answer would take as long again. */
const axe = (page: Page): AxeBuilder => new AxeBuilder({ page }).setLegacyMode(true);

type Violations = Awaited<ReturnType<AxeBuilder["analyze"]>>["violations"];

const inWords = (violations: Violations): string[] =>
  violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(" ")}`);

/**
 * WCAG 2.2 A and AA, and what the tool calls best practice; everything it finds on the page as it stands. Targets of at least
 * 24 by 24 CSS pixels (2.5.8) it looks at only when asked.
 */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await axe(page)
    .options({ rules: { "target-size": { enabled: true } } })
    .analyze();
  expect(inWords(violations)).toEqual([]);
}

/** Words against their ground, on the dark ground. */
export async function expectContrastInTheDark(page: Page): Promise<void> {
  await page.emulateMedia({ colorScheme: "dark" });
  const { violations } = await axe(page).withRules(["color-contrast"]).analyze();
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
