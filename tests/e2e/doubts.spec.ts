import { expect, test } from "#tests/e2e/support/test.ts";
import { open, save } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

test("a plan's day before the tube is refused beside its field; one that has passed is asked about and saved", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube();
  await open(page, `${tube}/record/plan-recorded`);
  const plan = page.getByLabel("Plan", { exact: true });
  const beside = page.locator("#field-plan-beside");
  await plan.fill("remove by 1 jan 2020");
  await expect(beside).toContainText("is it the day that is meant?");
  await page.getByRole("button", { name: "Record the operator's plan" }).click();
  await expect(beside).toContainText("Wed 1 Jan 2020 lies before the tube was placed");
  await plan.fill("remove by yesterday");
  await expect(beside).toContainText("That was yesterday: is it the day that is meant?");
  await save(page, "Record the operator's plan");
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeVisible();
});

test("a day that is still to come this year is said to be taken as last year's", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube();
  const coming = new Date(Date.now() + 10 * 86_400_000);
  await open(page, `${tube}/record/exchanged`);
  const beside = page.locator("#field-when-beside");
  await expect(beside).not.toContainText("is still to come");
  await page
    .getByLabel("Exchanged on")
    .fill(coming.toLocaleDateString("en-US", { day: "numeric", month: "short" }));
  await expect(beside).toContainText("is still to come, so the year before was taken.");
});
