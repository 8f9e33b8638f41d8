import type { Page } from "@playwright/test";
import { expectAccessible } from "#tests/e2e/support/accessibility.ts";
import { signInOf } from "#tests/e2e/support/template.ts";
import { expect, signIn, test } from "#tests/e2e/support/test.ts";
import { findByKey } from "#tests/e2e/support/typing.ts";

/** Longer than the time of quiet after which the page asks how long the session still lasts. */
const QUIET_MS = 19 * 60_000;

/** A page that is ready, with a clock that the test moves. */
async function openPage(page: Page): Promise<void> {
  await page.clock.install();
  await signIn(page, "nurse");
  await findByKey(page);
  const asked = page.waitForResponse("**/api/session");
  await page.evaluate(() => document.dispatchEvent(new Event("visibilitychange")));
  await asked;
}

test("a session that another page keeps alive is not warned of", async ({ page }) => {
  await openPage(page);
  const asked = page.waitForResponse("**/api/session");
  await page.clock.runFor(QUIET_MS);
  expect((await asked).status()).toBe(200);
  await expect(page.getByRole("dialog")).toHaveCount(0);
});

test("before the session ends the page warns, and one key goes on", async ({ page }) => {
  await openPage(page);
  await page.route("**/api/session", async (route) => {
    if (route.request().method() === "POST") await route.continue();
    else await route.fulfill({ json: { idleSeconds: 100, endsInSeconds: 9000 } });
  });
  await page.clock.runFor(QUIET_MS);
  await expect(page.getByRole("dialog", { name: "Are you still here?" })).toBeVisible();
  await expectAccessible(page);
  const wentOn = page.waitForResponse((answer) => answer.request().method() === "POST");
  await page.keyboard.press("Enter");
  expect((await wentOn).status()).toBe(200);
  await expect(page.getByRole("dialog")).toHaveCount(0);
});

test("once the session has ended the page is hidden until the same person signs in again", async ({
  page,
  context,
  complaints,
}) => {
  await openPage(page);
  const other = await context.newPage();
  await other.goto("/keys");
  await other.getByRole("button", { name: "Sign out" }).click();
  await page.clock.runFor(QUIET_MS);
  const dialog = page.getByRole("dialog", { name: "Your sign-in has ended" });
  await expect(dialog).toContainText(signInOf("nurse").userName);
  await expectAccessible(page);
  await page.keyboard.press("Escape");
  await expect(dialog).toBeVisible();
  await page.getByLabel("Password").fill("not the password at all");
  await page.keyboard.press("Enter");
  await expect(dialog).toContainText("User name and password do not fit together.");
  await page.getByLabel("Password").fill(signInOf("nurse").password);
  await page.keyboard.press("Enter");
  await expect(dialog).toHaveCount(0);
  await page.reload();
  await expect(page).toHaveURL(/\/keys$/);
  expect(complaints.splice(0).filter((text) => !text.includes("401 (Unauthorized)"))).toEqual([]);
});
