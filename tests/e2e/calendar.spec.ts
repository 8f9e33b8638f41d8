import type { Page } from "@playwright/test";
import { expectAccessible } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/test.ts";
import { hasFocus, open, save, saved, toMend, type } from "#tests/e2e/support/typing.ts";

const LAST = "To, the last closed day";
const LOOK = "Look at whom it touches";
const MOVED = /^(?<proposed>\w{3} \d{1,2} \w{3} \d{4})\s+now (?<stands>\w{3} \d{1,2} \w{3} \d{4})$/;

const comingOn = (page: Page) => page.getByRole("table", { name: /^Closed days and half days to come/ });
const undo = (page: Page) => page.getByRole("button", { name: "Undo", exact: true });

test.describe("the clinic's calendar, changed by the lead", () => {
  test.use({ role: "lead" });

  test("two weeks are closed: whom it touches is seen first, the old dates stand, a nurse confirms, and all of it is taken back (hard case 24)", async ({
    page,
    newTube,
    pageOf,
  }) => {
    const said = { patient: { familyName: "Quillwater" } };
    const { tube } = await newTube(said);
    await open(page, "/calendar/close");

    // A nephrostomy placed twenty days ago has its latest day, 90 days after, in 70 days.
    await page.keyboard.type("+66");
    await page.keyboard.press("Tab");
    await page.keyboard.type("+79");
    await page.keyboard.press("Tab");
    await page.keyboard.type("the floor is laid");
    await page.keyboard.press("Enter");

    const press = page.getByRole("button", { name: "Close the clinic", exact: true });
    await expect(press).toBeVisible();
    expect(await hasFocus(press)).toBe(true);
    await expect(page.getByText(/^Closed .+: the floor is laid\.$/)).toBeVisible();
    await expect(
      page.getByText(/\d+ tubes? gets? a new date proposed; \S+ would be past latest today\./),
    ).toBeVisible();
    await expectAccessible(page);
    const touched = page.getByRole("table", { name: /^Dates that would be proposed/ });
    const row = touched.getByRole("row").filter({ hasText: "Quillwater" }).filter({ hasText: "Exchange" });
    const latest = (await row.getByRole("cell").nth(4).textContent()) ?? "";
    const { proposed = "", stands = "" } = MOVED.exec(latest)?.groups ?? {};
    expect(proposed, latest).not.toBe("");

    const nurse = await pageOf("nurse");
    await test.step("until it is pressed, nothing is closed and nothing proposed", async () => {
      await nurse.goto("/calendar");
      await expect(comingOn(nurse).getByText("the floor is laid")).toHaveCount(0);
    });

    await page.keyboard.press("Enter");
    await saved(page);
    await expect(page.getByText(/New dates are proposed for \d+ tubes?; the old ones stand/)).toBeVisible();

    await test.step("the old date stands until the nurse confirms", async () => {
      await nurse.goto(tube);
      await expect(nurse.getByText(stands).first()).toBeVisible();
      await nurse.goto("/dates");
      const waiting = nurse
        .getByRole("row")
        .filter({ hasText: "Quillwater" })
        .filter({ hasText: "Exchange" });
      await expect(waiting).toContainText("of the calendar");
      await expect(waiting).toContainText(proposed);
      await nurse.getByRole("button", { name: /^Let the new dates of/ }).click();
      await saved(nurse);
      const other = await nurse.context().newPage();
      await other.goto(tube);
      await expect(other.getByText(proposed).first()).toBeAttached();
      await expect(other.getByText(stands).filter({ visible: true })).toHaveCount(0);
      await other.close();
      await undo(nurse).click();
      await expect(nurse.getByText(/^Undone: /)).toBeVisible();
    });

    await undo(page).click();
    await expect(page.getByText(/^Undone: /)).toBeVisible();
    await nurse.goto("/dates");
    await expect(nurse.getByText("No change of dates is proposed.")).toBeVisible();
    await page.goto("/calendar/history");
    const versions = page.getByRole("table", { name: /^Versions/ }).getByRole("row");
    await expect(versions.nth(1)).toContainText(/No longer closed .+: the floor is laid\./);
    await expect(versions.nth(2)).toContainText(/Lorne Leadbeater.*Closed .+: the floor is laid\./);
  });

  test("what cannot be is asked again beside its field, and nothing typed is lost", async ({ page }) => {
    await open(page, "/calendar/close");
    const asked = async (texts: Record<string, string>, sentence: string | RegExp) => {
      await type(page, texts);
      await save(page, LOOK);
      await expect(toMend(page)).toContainText(sentence);
      for (const [label, text] of Object.entries(texts))
        await expect(page.getByLabel(label, { exact: true })).toHaveValue(text);
    };
    await asked({ From: "+10", [LAST]: "+9", Why: "works" }, "The closure ends before it starts.");
    await asked({ From: "+100", [LAST]: "+499" }, "This is a closure of 400 days;");
    await asked({ From: "-9", [LAST]: "-3" }, "what is past touches no date");
    await asked({ From: "+50", [LAST]: "+60" }, /The clinic is closed .+ already: the room is rebuilt\./);
    await asked({ From: "+100", [LAST]: "", Why: "" }, "Type why the clinic is closed.");

    await open(page, "/calendar/half-day");
    await asked({ On: "+45", Why: "course" }, "the room is rebuilt. Move or take away that closure first");

    await open(page, "/calendar/weekdays");
    await asked({ "Open on": "" }, "The clinic is open on at least one day of the week.");
    await asked({ "Open on": "fryday" }, '"fryday" is not understood as days of the week.');
  });

  test("half a day is opened, moved and taken away again; an open weekday comes and goes", async ({
    page,
  }) => {
    const fromToday = (new Date().getUTCDay() + 4) % 7;
    const wednesday = `+${28 + ((7 - fromToday) % 7)}`;
    await open(page, "/calendar/half-day");
    await type(page, { On: wednesday, Why: "course" });
    await save(page, LOOK);
    await expect(page.getByText("No date that stands would be another.").first()).toBeVisible();
    await page.getByRole("button", { name: "Change what is typed" }).click();
    await expect(page.getByLabel("Why", { exact: true })).toHaveValue("course");
    await save(page, LOOK);
    await save(page, "Open half a day");
    await saved(page);

    await page.goto("/calendar");
    const half = comingOn(page).getByRole("row").filter({ hasText: "course" });
    await expect(half).toContainText("open until noon");
    await half.getByRole("link", { name: /^Move/ }).click();
    await page.getByLabel("Open in the", { exact: true }).selectOption("afternoon");
    await save(page, LOOK);
    await save(page, "Move the half day");
    await saved(page);

    await page.goto("/calendar");
    await expect(half).toContainText("open from noon on");
    await half.getByRole("link", { name: /^Take away/ }).click();
    await save(page, "Take it away");
    await saved(page);
    await page.goto("/calendar");
    await expect(half).toHaveCount(0);

    for (const openWeekdays of ["mon-sat", "mon-fri"]) {
      await open(page, "/calendar/weekdays");
      await type(page, { "Open on": openWeekdays });
      await save(page, LOOK);
      await save(page, "Set the open weekdays");
      await saved(page);
    }
    await page.goto("/calendar");
    await expect(page.getByText("Monday to Friday", { exact: true })).toBeVisible();
  });

  test("holidays of a country are proposed, those checked become the clinic's own, and are taken back", async ({
    page,
  }) => {
    await page.goto("/calendar");
    await page.getByRole("link", { name: "Propose holidays" }).click();
    await page.getByLabel("Country").selectOption({ label: "United Kingdom" });
    await page.getByRole("button", { name: "Propose", exact: true }).click();
    await page.getByLabel("Region").selectOption({ label: "England" });
    const years = await page.getByLabel("Year").locator("option").allInnerTexts();
    await page.getByLabel("Year").selectOption(years[1] ?? "");
    await page.getByRole("button", { name: "Propose", exact: true }).click();
    const holidays = page.getByRole("table", { name: /^Public holidays/ });
    const friday = holidays.getByRole("row").filter({ hasText: "Good Friday" });
    await expect(friday.getByRole("checkbox")).toBeChecked();
    await friday.getByRole("checkbox").uncheck();
    await page.getByRole("button", { name: /^Look at whom \d+ holidays would touch/ }).click();
    await page.getByRole("button", { name: /^Add \d+ holidays$/ }).click();
    await saved(page);

    const calendar = await page.context().newPage();
    await calendar.goto("/calendar");
    await expect(comingOn(calendar).getByText("Easter Monday")).toBeVisible();
    await expect(comingOn(calendar).getByText("Good Friday")).toHaveCount(0);
    await calendar.goto(`/calendar/holidays?country=GB&region=ENG&year=${years[1]}`);
    const stands = calendar.getByRole("row").filter({ hasText: "Easter Monday" });
    await expect(stands).toContainText("closed already: Easter Monday");
    await expect(stands.getByRole("checkbox")).not.toBeChecked();
    await calendar.close();

    await undo(page).click();
    await expect(page.getByText(/^Undone: /)).toBeVisible();
    await page.goto("/calendar");
    await expect(comingOn(page).getByText("Easter Monday")).toHaveCount(0);
  });
});

test.describe("for a nurse", () => {
  test.use({ role: "nurse" });

  test("the calendar is there to read, and nothing to change", async ({ page }) => {
    await page.goto("/calendar");
    await expect(comingOn(page).getByText("the room is rebuilt")).toBeVisible();
    await expect(
      page.locator("main").getByRole("link", { name: /^(Move|Take away|Close|Open|Propose)/ }),
    ).toHaveCount(0);
    for (const form of ["close", "half-day", "weekdays", "holidays", "take-away"]) {
      await page.goto(`/calendar/${form}`);
      await expect(page.getByRole("link", { name: "Go back" })).toBeVisible();
    }
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto("/calendar");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});
