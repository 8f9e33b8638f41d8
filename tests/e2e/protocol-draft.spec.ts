import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { expectAccessible, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { expectOnly } from "#tests/e2e/support/test.ts";
import { hasFocus, open, save, saved, toMend, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "lead" });

const ROW = "/protocol/draft/row?address=intervals/nephrostomy";
const CHANGE = "Change the row in the draft";

const differences = (page: Page) => page.getByRole("table", { name: /^What differs from version/ });

/** The clinic of this worker may hold a draft of another test. */
test.beforeEach(async ({ page }) => {
  await page.goto("/protocol/draft");
  const drop = page.getByRole("button", { name: "Drop the draft" });
  if ((await drop.count()) === 0) return;
  await drop.click();
  await page.getByRole("button", { name: "Drop all of it" }).click();
  await expect(page.getByText(/^Nothing is drafted/)).toBeVisible();
});

test("the lead drafts nephrostomy from 63 / 77 / 90 to 49 / 63 / 77, by keys, and sees it as a difference", async ({
  page,
  complaints,
}) => {
  await page.goto("/protocol");
  await page.getByRole("link", { name: "Draft a change" }).click();
  await expect(page.getByText(/^Nothing is drafted: version 1 stands/)).toBeVisible();
  await page.getByRole("link", { name: "Change nephrostomy", exact: true }).click();
  await expect(page.getByRole("button", { name: CHANGE })).toBeEnabled();
  expect(await hasFocus(page.getByLabel("Earliest, days"))).toBe(true);

  await test.step("a target after the latest is refused beside its field, and nothing typed is lost", async () => {
    await page.keyboard.type("49");
    await page.keyboard.press("Tab");
    await page.keyboard.type("630");
    await page.keyboard.press("Tab");
    await page.keyboard.type("77");
    await page.keyboard.press("Enter");
    await expect(toMend(page)).toContainText(
      "The target, 630 days, lies after the latest, 77. Make the target 77 or less, or the latest 630 or more.",
    );
    const target = page.getByLabel("Target, days");
    await expect(target).toHaveAttribute("aria-invalid", "true");
    await expect(target).toHaveValue("630");
    await expect(page.getByLabel("Earliest, days")).toHaveValue("49");
    await expect(page.getByLabel("Latest, days", { exact: true })).toHaveValue("77");
  });

  // The browser writes down that an answer was a refusal.
  expectOnly(complaints, "422");
  await type(page, { "Target, days": "63" });
  await page.keyboard.press("Enter");
  await saved(page);
  await page.getByRole("link", { name: "To the draft" }).click();
  await expect(
    page.getByText(/^Draft of version 2, begun from version 1; changed by Lorne Leadbeater/),
  ).toBeVisible();
  const row = differences(page).getByRole("row", { name: /^nephrostomy/ });
  await expect(row).toContainText("earliest 63; target 77; latest 90");
  await expect(row).toContainText("earliest 49; target 63; latest 77");
  await expect(differences(page).getByRole("row")).toHaveCount(2);

  await test.step("what stands is as it was, and the reason stands with the draft", async () => {
    await page.goto("/protocol");
    await expect(page.getByRole("row", { name: /^nephrostomy exchange/ })).toContainText("77");
    await open(page, "/protocol/draft/note");
    await type(page, { "Why the table changes": "Blocked twice in a year." });
    await save(page, "Write it to the draft");
    await saved(page);
    await page.goto("/protocol/draft");
    await expect(page.getByText("Why: Blocked twice in a year.")).toBeVisible();
    for (const path of ["", "/note"]) {
      await page.goto(`/protocol/draft${path}`);
      await expectAccessible(page);
      await expectReflow(page);
    }
  });
});

test("a row is emptied and taken back, one is added to a list, and the draft is dropped", async ({
  page,
}) => {
  await open(page, "/protocol/draft/row?address=balloon");
  await page.getByRole("button", { name: "Empty it to no row" }).click();
  await saved(page);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await expect(page.getByText(/^Undone: Balloon water: out of the draft/)).toBeVisible();
  await page.goto("/protocol/draft");
  await expect(page.getByText("The draft has the same rows as version 1.")).toBeVisible();

  await page.getByRole("link", { name: "Red flag", exact: true }).click();
  await expect(page.getByRole("button", { name: "Add the row to the draft" })).toBeEnabled();
  await type(page, { "Name of the row": "feels hot", Says: "feels hot at night", Source: "CP" });
  await page.getByLabel("Who is reached, and how soon").selectOption("same day");
  await page.getByLabel("Raised by entry 1: the trouble").selectOption("leaking");
  await save(page, "Add the row to the draft");
  await expect(toMend(page)).toContainText("Type yes or no.");
  await page.getByLabel("Raised by entry 1: grave").selectOption("no");
  await save(page, "Add the row to the draft");
  await saved(page);
  await page.goto("/protocol/draft");
  await expect(differences(page).getByRole("row", { name: /^Red flag: feels hot/ })).toContainText(
    "same day: feels hot at night; raised by an entry: leaking",
  );

  await page.getByRole("button", { name: "Drop the draft" }).click();
  await page.getByRole("button", { name: "Keep it" }).click();
  await page.getByRole("button", { name: "Drop the draft" }).click();
  await page.getByRole("button", { name: "Drop all of it" }).click();
  await expect(page.getByText(/^Nothing is drafted/)).toBeVisible();
});

test("the table goes out as a file and comes back mended; a file without a column is refused with a sentence", async ({
  page,
}) => {
  await page.goto("/protocol/draft");
  const download = page.waitForEvent("download");
  await page.getByRole("link", { name: "What stands as a file" }).click();
  const file = await download;
  expect(file.suggestedFilename()).toBe("protocol.csv");
  const text = readFileSync(await file.path(), "utf8");
  const mended = text.replace(/(intervals\/nephrostomy,[^,]*,target,)77/, "$163");
  const bring = async (name: string, content: string): Promise<void> => {
    await page
      .getByLabel("File", { exact: true })
      .setInputFiles({ name, mimeType: "text/csv", buffer: Buffer.from(content) });
    await page.getByRole("button", { name: "Bring it into the draft" }).click();
  };
  await page.goto("/protocol/draft/file");
  await expect(page.getByRole("button", { name: "Bring it into the draft" })).toBeEnabled();

  await bring("no-column.csv", text.replace("row,called,figure,value", "row,called,figure,days"));
  await expect(toMend(page)).toContainText('No column of this file is called "value".');
  await bring("late.csv", text.replace(/(intervals\/nephrostomy,[^,]*,target,)77/, "$195"));
  await expect(toMend(page)).toContainText("1 line is to mend, listed below. Nothing was taken.");
  await expect(page.getByRole("table", { name: /^Lines to mend/ })).toContainText(
    "The target, 95 days, lies after the latest, 90.",
  );
  await page.goto("/protocol/draft");
  await expect(page.getByText(/^Nothing is drafted/)).toBeVisible();

  await page.goto("/protocol/draft/file");
  await expect(page.getByRole("button", { name: "Bring it into the draft" })).toBeEnabled();
  await bring("mended.csv", mended);
  await expect(page.getByText("The draft has the rows of the file.")).toBeVisible();
  await page.getByRole("link", { name: "To the draft" }).click();
  await expect(differences(page).getByRole("row", { name: /^nephrostomy/ })).toContainText("target 63");
});

test("a long address keeps what is typed and not saved", async ({ page }) => {
  await open(page, ROW);
  await type(page, { "Earliest, days": "48" });
  await page.keyboard.press("Escape");
  await expect(page).toHaveURL(/\/protocol\/draft$/);
  await open(page, ROW);
  await expect(page.getByLabel("Earliest, days")).toHaveValue("48");
  await type(page, { "Earliest, days": "63" });
  await save(page, CHANGE);
  await saved(page);
});

test.describe("for a nurse", () => {
  test.use({ role: "nurse" });

  test("there is nothing to draft", async ({ page }) => {
    await page.goto("/protocol");
    await expect(page.getByRole("link", { name: "Draft a change" })).toHaveCount(0);
    for (const path of ["", "/row?address=balloon", "/note", "/file"]) {
      await page.goto(`/protocol/draft${path}`);
      await expect(page.getByText("Your role may not do this.")).toBeVisible();
    }
    const headers = { "sec-fetch-site": "same-origin" };
    expect((await page.request.get("/api/protocol", { headers })).status()).toBe(403);
  });
});
