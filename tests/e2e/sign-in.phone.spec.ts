import { expectAccessible } from "#tests/e2e/support/accessibility.ts";
import { expect, signIn, test } from "#tests/e2e/support/test.ts";

test("on a phone the sign-in page and a table fit the width", async ({ page }) => {
  await page.goto("/sign-in");
  await expectAccessible(page);
  await signIn(page, "nurse");
  await expectAccessible(page);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
});
