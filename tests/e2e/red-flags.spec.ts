import type { Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { record } from "#tests/e2e/support/record.ts";
import { open, save, saved, storyRows, type } from "#tests/e2e/support/typing.ts";

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
    await expect(storyRows(page, /Red flag handed/).getByRole("link")).toHaveText(["Undo"]);
    await page.goto(flag);
    await expect(page.getByRole("main")).toContainText("seen, antibiotic begun");
  });
});

test("a nephrostomy out for some hours with a nine-day tract: immature, its red flag handed over, and three urgent slots", async ({
  page,
  newTube,
}) => {
  const { patient, tube } = await newTube({ patient: { familyName: "Outley" }, tube: { when: "-9" } });
  await page.goto(tube);
  await page.getByRole("link", { name: "It is out, or partly out" }).click();
  await open(page, page.url());
  const main = page.getByRole("main");

  await test.step("what the rows say stands beside the fields before anything is saved", async () => {
    await expect(main).toContainText(
      "Immature tract: tract at least 9 days old, under the 14 days of the row",
    );
    await expect(main).toContainText("ring now, likely a new access");
    await expect(main).toContainText("Size that was in: 8 F; one usual step below: 6 F.");
    await expect(main).toContainText("Class high");
    await page.getByLabel("How far", { exact: true }).selectOption({ label: "Part of the way out" });
    await expect(main).toContainText("do not use, do not push back");
    await expect(main).toContainText("secure as it is, ring");
    await page.getByLabel("How far", { exact: true }).selectOption({ label: "Wholly out" });
    await expect(main).toContainText("keep the old tube, cover the site, nothing pushed in");
  });

  await test.step("a day before its placement is refused beside its field", async () => {
    await type(page, { "Out since": "-12", "Handed to": "Dr Example" });
    await save(page, "Record the tube that is out");
    await expect(page.getByText("it cannot have come out before").first()).toBeVisible();
  });

  await type(page, { "Out since": "-1", "Where is the old tube": "kept", "Told by": "the son" });
  await save(page, "Record the tube that is out");
  await saved(page);
  await expect(unhanded(page)).toHaveCount(0);

  await test.step("three urgent slots are the next link", async () => {
    await page.getByRole("link", { name: "Book the visit, urgent: three slots" }).click();
    await expect(page.getByRole("group", { name: /Three slots/ }).getByRole("radio")).toHaveCount(3);
    await expect(main).toContainText("Immature: the row's limit is 14 days");
    await page.goto(patient);
    await expect(page.getByRole("region", { name: "Red flag" })).toContainText("tube out or partly out");
  });
});
