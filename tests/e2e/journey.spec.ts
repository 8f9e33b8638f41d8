import type { Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/test.ts";
import { save, saved, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

/** Follows the link to a form and waits until its keys are listened to. */
async function record(page: Page, act: string): Promise<void> {
  await page.getByRole("link", { name: act, exact: true }).first().click();
  await expect(page.getByRole("button", { name: act, exact: true })).toBeEnabled();
}

async function registered(page: Page, familyName: string, number: string): Promise<void> {
  await page.goto("/patients/new");
  await type(page, {
    "Family name": familyName,
    "Given name": "Cuthbert",
    "Born on": "4 may 1959",
    "Record number": number,
  });
  await page.keyboard.press("Enter");
  await page.getByRole("link", { name: "To the patient" }).click();
}

test("from a tube taken over in March, size unknown, to its exchange, its net days and who saw it", async ({
  page,
  pageOf,
}) => {
  test.slow();
  await test.step("the nurse records a nephrostomy taken over in March, size unknown", async () => {
    await registered(page, "Applewhistle", "000815");
    await expect(page.getByText("000815")).toBeVisible();
    await record(page, "Record a tube");
    await expect(page.getByText("No tube is recorded yet.")).toBeVisible();
    await type(page, {
      Kind: "pcn",
      Side: "l",
      Size: "?",
      "Placed, or last exchanged, on": "march",
      "Taken over from": "a hospital abroad",
    });
    await save(page, "Record a tube");
    await expect(page.getByText("Record a tube: saved.")).toBeVisible();
    await page.getByRole("link", { name: "To the tube" }).click();
    await expect(page.getByRole("region", { name: "Patient" })).toContainText(
      "Left nephrostomy, size unknown",
    );
  });
  const tube = page.url();

  await test.step("it stands on Today, with its date to be assessed", async () => {
    await page.goto("/");
    const past = page.getByRole("table", { name: /^Past latest/ });
    await expect(past).toContainText("Applewhistle");
    await page.getByRole("heading", { name: "Loose ends" }).click();
    const ends = page.getByRole("group").filter({ hasText: "Loose ends" });
    await expect(ends.getByRole("row", { name: /^Assess the date Applewhistle/ })).toBeVisible();
  });

  await test.step("confirming 8 F leaves the inside unknown; the label is noted by itself", async () => {
    await page.goto(tube);
    await record(page, "Note facts of the tube");
    await type(page, { Size: "8f" });
    await page.keyboard.press("Enter");
    await page.getByRole("link", { name: "To the tube" }).click();
    await expect(page.getByRole("region", { name: "Patient" })).toContainText("Left nephrostomy, 8 F");
    await record(page, "Plan the exchange");
    await type(page, { Wire: ".038 in" });
    await expect(page.getByText(/Cannot tell: record what wire the tube takes/).first()).toBeVisible();
    await page.goto(tube);
    await record(page, "Note facts of the tube");
    await type(page, { "Takes a wire of (label)": ".035 in" });
    await save(page, "Note facts of the tube");
    await saved(page);
  });

  await test.step("an 0.038 in wire through a tube labelled for 0.035 is warned of where it is typed", async () => {
    await page.goto(tube);
    await record(page, "Plan the exchange");
    await type(page, { "Planned for": "+3", Wire: ".038 in" });
    await expect(
      page.getByText("Does not pass: labelled for 0.035 in; the wire is 0.038 in.").first(),
    ).toBeVisible();
    await save(page, "Plan the exchange");
    await expect(page.getByText(/The clinic's row asks why this goes on/).first()).toBeVisible();
    await type(page, { "Reason to go on all the same": "1" });
    await save(page, "Plan the exchange");
    await expect(page.getByText("Plan the exchange: saved.")).toBeVisible();
  });

  await test.step("the exchange is recorded and the new dates stand with their why", async () => {
    await page.goto(tube);
    await record(page, "Record an exchange");
    await page.keyboard.press("Enter");
    await saved(page);
    await page.goto(tube);
    await page.getByText("in 77 days").first().click();
    await expect(page.getByText(/earliest 63, target 77, latest 90 days/).first()).toBeVisible();
    await expect(page.getByText(/\+ 77 days = /).first()).toBeVisible();
  });

  await test.step("a caller logs two emptyings with their flush", async () => {
    const caller = await pageOf("caller");
    for (const texts of [
      { "Drained, mL": "300", "Flush given, mL": "none", "Emptied at": "yesterday 08:00" },
      { "Drained, mL": "1210", "Flush given, mL": "10", "Emptied at": "today 00:00" },
    ]) {
      await caller.goto(`${tube}/record/reading`);
      await expect(caller.getByRole("button", { name: "Log the emptying" })).toBeEnabled();
      await type(caller, texts);
      await caller.keyboard.press("Enter");
      await expect(caller.getByText("The emptying is logged.")).toBeVisible();
    }
  });

  await test.step("a physician reads the net days", async () => {
    const physician = await pageOf("physician");
    await physician.goto(`${tube}/output`);
    await expect(physician.getByText(/rows raise an alarm from what is logged/i).first()).toBeVisible();
    const day = physician.getByRole("row", { name: /1200 mL 1800 mL\/24 h 16 h/ });
    await expect(day).toContainText("Readings cover only part of this time.");
  });

  await test.step("the lead reads who saw and who did what", async () => {
    const lead = await pageOf("lead");
    await lead.goto("/audit");
    await expect(lead.getByText("Petra Physick").first()).toBeVisible();
    await expect(lead.getByText("Corin Callwell").first()).toBeVisible();
  });
});
