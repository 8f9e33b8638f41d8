import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { open, save, saved, type } from "#tests/e2e/support/typing.ts";

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

test("a reading that another one runs into is asked beside its time, logged as typed, asked again, and can be corrected", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube();
  const log = "Log the emptying";
  await open(page, `${tube}/record/reading`);
  await type(page, { "Drained, mL": "30", "Emptied at": "yesterday 8:00" });
  await expect(page.locator("#field-to-beside")).not.toContainText("Is this really");
  await save(page, log);
  await saved(page);
  await open(page, `${tube}/record/reading`);
  await type(page, { "Drained, mL": "1000", "Flush given, mL": "250", "Emptied at": "yesterday 8:00" });
  await expect(page.locator("#field-to-beside")).toContainText("Is this really");
  await expect(page.locator("#field-flushGiven-beside")).toContainText("of flush; ordered is");
  await save(page, log);
  await saved(page);
  await expect(page.getByRole("listitem").filter({ hasText: "Is this really" })).toBeVisible();
  await page.getByRole("link", { name: "Correct it" }).click();
  await expect(page.getByLabel("Drained, mL")).toHaveValue("1000");
});

test("a reading before the tube was placed is asked about and logged", async ({ page, newTube }) => {
  const { tube } = await newTube();
  await open(page, `${tube}/record/reading`);
  await type(page, { "Drained, mL": "30", "Emptied at": "-40 8:00" });
  await expect(page.locator("#field-to-beside")).toContainText("The tube is known to lie there since");
  await save(page, "Log the emptying");
  await saved(page);
});

test("a chest tube is asked for air leak and swing, and a session for what was felt; other tubes for neither", async ({
  page,
  newTube,
}) => {
  const { tube: chest } = await newTube({ tube: { kind: "chest tube l" } });
  await open(page, `${chest}/record/reading`);
  await type(page, { "Drained, mL": "80" });
  await page.getByLabel("Air leak").selectOption("present");
  await page.getByLabel("Swing with breathing").selectOption("seen");
  await expect(page.getByLabel("Felt during it")).toHaveCount(0);
  await save(page, "Log the emptying");
  await saved(page);
  await page.goto(`${chest}/output`);
  await expect(page.getByRole("row", { name: /air leak, swing seen/ })).toBeVisible();
  await page.getByRole("link", { name: "Correct" }).click();
  await expect(page.getByLabel("Air leak")).toHaveValue("present");
  const { tube: pleural } = await newTube({ tube: { kind: "tunnelled pleural catheter l" } });
  await open(page, `${pleural}/record/reading`);
  await type(page, { "Drained, mL": "700", "Felt during it": "cough" });
  await expect(page.getByLabel("Air leak")).toHaveCount(0);
});
