import type { Page } from "@playwright/test";
import { expectAccessible, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { test } from "#tests/e2e/support/own-clinic.ts";
import { signInOf } from "#tests/e2e/support/template.ts";
import { expect, expectOnly } from "#tests/e2e/support/test.ts";
import { open, save, saved, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "lead" });

/** "31 tubes get a new date proposed; 4 would be past latest today." */
async function countsOf(page: Page): Promise<{ tubes: number; past: string | undefined }> {
  const lede = await page.getByText(/new date proposed; .* would be past latest today/).textContent();
  const [, tubes, past] = /^(\d+) tubes? gets? a new date proposed; (\S+) would/.exec(lede ?? "") ?? [];
  return { tubes: Number(tubes), past };
}

const proposed = (page: Page) => page.getByRole("table", { name: /^Proposed dates/ });
const proposedRow = (page: Page, name: string) => proposed(page).getByRole("row").filter({ hasText: name });

/** The days that the tube's page says of what is to come. */
async function daysOn(page: Page, tube: string): Promise<string> {
  await page.goto(tube);
  const text = (await page.getByRole("main").textContent()) ?? "";
  const days = text.match(/(?:earliest|target|latest) \w{3} \d{1,2} \w{3} \d{4}/g) ?? [];
  expect(days.length).toBeGreaterThan(0);
  return days.join(", ");
}

test("a row is drafted, its impact seen, signed by an approver, and the nurse confirms some (hard case 34)", async ({
  page,
  pageOf,
  complaints,
  newTube,
}) => {
  test.slow();
  const name = "Inkhorn";
  const { tube } = await newTube({ patient: { familyName: name } });
  const physician = await pageOf("physician");
  const nurse = await pageOf("nurse");

  await test.step("the lead drafts nephrostomy from 63 / 77 / 90 to 49 / 63 / 77", async () => {
    await open(page, "/protocol/draft/row?address=intervals/nephrostomy");
    await type(page, { "Earliest, days": "49", "Target, days": "63", "Latest, days": "77" });
    await save(page, "Change the row in the draft");
    await saved(page);
  });

  await page.goto("/protocol/impact");
  const { tubes, past } = await countsOf(page);
  expect(tubes).toBeGreaterThan(1);
  expect(past).not.toBeUndefined();
  await expect(page.getByRole("row").filter({ hasText: name })).toContainText("now ");
  await expect(page.getByText("An approver signs it, signed in to their own account.")).toBeVisible();
  await expectAccessible(page);
  await expectReflow(page);

  await test.step("a wrong password signs nothing; the physician's own does", async () => {
    await physician.goto("/protocol/impact");
    await physician.getByLabel("Your password, to sign").fill("not this one");
    await physician.getByRole("button", { name: "Sign the draft" }).click();
    await expect(physician.getByText("This is not the password of your account.")).toBeVisible();
    expectOnly(complaints, "422");
    await physician.getByLabel("Your password, to sign").fill(signInOf("physician").password);
    await physician.getByRole("button", { name: "Sign the draft" }).click();
    await expect(
      physician.getByText(`New dates are proposed for ${tubes} tubes; the old ones stand.`),
    ).toBeVisible();
    await physician.goto("/protocol/history");
    const newest = physician.getByRole("row").nth(1);
    await expect(newest).toContainText("Petra Physick");
    await expect(newest).toContainText("Lorne Leadbeater");
  });

  const before = await daysOn(page, tube);

  await test.step("the nurse lets one stand: that one moves, and undone it stands where it was", async () => {
    await nurse.goto("/exchanges");
    await nurse.getByRole("link", { name: /^New dates are proposed for/ }).click();
    await expectAccessible(nurse);
    await expectReflow(nurse);
    await nurse.getByRole("button", { name: "Check none" }).click();
    await proposedRow(nurse, name).getByRole("checkbox").check();
    await nurse.getByRole("button", { name: "Let the new dates of 1 tube stand" }).click();
    await expect(nurse.getByText("The new dates of 1 tube stand.")).toBeVisible();
    await expect(proposedRow(nurse, name)).toHaveCount(0);
    expect(await daysOn(page, tube)).not.toBe(before);
    await nurse.getByRole("button", { name: "Undo", exact: true }).click();
    await expect(proposedRow(nurse, name)).toHaveCount(1);
    expect(await daysOn(page, tube)).toBe(before);
  });

  await test.step("all of them together, and none is left", async () => {
    await nurse.goto("/dates");
    await nurse.getByRole("button", { name: `Let the new dates of ${tubes} tubes stand` }).click();
    await expect(nurse.getByText(`The new dates of ${tubes} tubes stand.`)).toBeVisible();
    await expect(nurse.getByText("No change of dates is proposed.")).toBeVisible();
    expect(await daysOn(page, tube)).not.toBe(before);
  });
});
