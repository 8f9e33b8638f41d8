import type { Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { record } from "#tests/e2e/support/record.ts";
import { open, save, saved, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const head = (page: Page) => page.getByRole("banner").first();
const unhanded = (page: Page) => head(page).getByRole("link", { name: /handed to nobody/ });

test("a red flag that nobody has heads every page until it is handed over, and is open until what was done is recorded", async ({
  page,
  newTube,
}) => {
  const { patient, tube } = await newTube({ patient: { familyName: "Hotley" } });
  await record(page, `${patient}/flags/new`, {
    act: "Raise the red flag",
    chosen: { "What was told": "38.0 C and over, shaking chills, or feels very unwell (same day)" },
    typed: { "Told by": "the daughter", "Handed to": "nobody yet" },
  });

  await test.step("every page says so, and leads to it", async () => {
    for (const path of ["/", "/visits", "/books", patient, tube]) {
      await page.goto(path);
      await expect(unhanded(page)).toHaveText(/Hotley, Ada, fever, since \d\d:\d\d/);
    }
    await page.emulateMedia({ media: "print" });
    await expect(unhanded(page)).toBeHidden();
    await page.emulateMedia({ media: null });
  });

  await test.step("what holds until somebody is reached, and that the app is not for emergencies", async () => {
    await unhanded(page).click();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("Who has this red flag?");
    await expect(page.getByRole("main")).toContainText("reconnect to bag");
    await expect(page.getByRole("main")).toContainText("not for emergencies");
    await expect(page.getByRole("main")).toContainText("not known: ask");
  });

  const flag = new URL(page.url()).pathname;
  await test.step("handed to a named person, it is gone from the head", async () => {
    await open(page, flag);
    await type(page, { "Handed to": "Nobody" });
    await save(page, "Hand the red flag over");
    await expect(page.getByText("Type the name of the person who has it now").first()).toBeVisible();
    await type(page, { "Handed to": "Dr Example" });
    await save(page, "Hand the red flag over");
    await saved(page);
    await expect(unhanded(page)).toHaveCount(0);
    await page.goto(patient);
    await expect(unhanded(page)).toHaveCount(0);
    await expect(page.getByRole("region", { name: "Red flag" })).toContainText("Handed to Dr Example");
  });

  await test.step("what was done closes it", async () => {
    await page.getByRole("region", { name: "Red flag" }).getByRole("link").click();
    await type(page, { "What was done": "seen, antibiotic begun", "By whom": "Dr Example" });
    await save(page, "Record what was done");
    await saved(page);
    await page.goto(patient);
    await expect(page.getByRole("region", { name: "Red flag" })).toHaveCount(0);
    await page.goto(flag);
    await expect(page.getByRole("main")).toContainText("seen, antibiotic begun");
  });
});
