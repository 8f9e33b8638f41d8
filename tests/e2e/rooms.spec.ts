import type { Page } from "@playwright/test";
import { expectAccessible } from "#tests/e2e/support/accessibility.ts";
import { expect, expectOnly, test } from "#tests/e2e/support/test.ts";
import { open, save, saved, toMend, type } from "#tests/e2e/support/typing.ts";

const RESERVE = "Kept free for urgent visits, minutes a day";

const rooms = (page: Page) => page.getByRole("table", { name: /^Rooms/ });
const row = (page: Page, name: string) => rooms(page).getByRole("row").filter({ hasText: name });
const undo = (page: Page) => page.getByRole("button", { name: "Undo", exact: true });

async function add(page: Page, texts: Readonly<Record<string, string>>): Promise<void> {
  await open(page, "/rooms/new");
  await type(page, texts);
  await save(page, "Add the room");
  await saved(page);
}

test.describe("the clinic's rooms, changed by the lead", () => {
  test.use({ role: "lead" });

  test("one is added; open from 17:00 to 08:00 it is refused with what to write, and nothing typed is lost", async ({
    page,
  }) => {
    await page.goto("/rooms");
    await page.getByRole("link", { name: "Add a room" }).click();
    await open(page, "/rooms/new");
    await page.keyboard.type("Night room");
    await page.keyboard.press("Tab");
    await page.keyboard.type("fluoro, us");
    await page.keyboard.press("Tab");
    await page.keyboard.type("mon-fri 17:00-08:00");
    await page.keyboard.press("Tab");
    await page.keyboard.type("1 h");
    await expect(page.getByText("fluoroscopy and ultrasound", { exact: true })).toBeVisible();
    await expect(page.getByText("60 minutes of each day", { exact: true })).toBeVisible();
    await page.keyboard.press("Enter");
    await expect(toMend(page)).toContainText(
      "17:00 to 08:00 ends before it begins: a room that works over midnight is written as two, from 17:00 to 24:00 and from 00:00 to 08:00 on the days after.",
    );
    for (const [label, text] of [
      ["Name", "Night room"],
      ["What it can do", "fluoro, us"],
      ["Staffed", "mon-fri 17:00-08:00"],
      [RESERVE, "1 h"],
    ] as const)
      await expect(page.getByLabel(label, { exact: true })).toHaveValue(text);

    await type(page, { Staffed: "mon-fri 17-24, tue-sat 0-8" });
    await page.keyboard.press("Enter");
    await saved(page);
    await expect(page.getByText(/^Added Night room\. Can do: fluoroscopy and ultrasound\./)).toBeVisible();
    await page.getByRole("link", { name: "To the rooms" }).click();
    await expect(row(page, "Night room")).toContainText("Tuesday to Friday 00:00 to 08:00, 17:00 to 24:00");
    await expect(row(page, "Night room")).toContainText("60 minutes of each day");
  });

  test("what cannot be is asked again beside its field", async ({ page }) => {
    await open(page, "/rooms/new");
    const asked = async (texts: Record<string, string>, sentence: string) => {
      await type(page, texts);
      await save(page, "Add the room");
      await expect(toMend(page)).toContainText(sentence);
      for (const [label, text] of Object.entries(texts))
        await expect(page.getByLabel(label, { exact: true })).toHaveValue(text);
    };
    await asked({ Name: "" }, "Type the name of the room.");
    await asked({ Name: "room  1", Staffed: "mon-fri 8-16" }, "Another room is called Room 1 already.");
    await asked({ Name: "Room 9", "What it can do": "laser" }, '"laser" is not one of: fluoroscopy,');
    await asked(
      { "What it can do": "CT", [RESERVE]: "9 h" },
      "540 minutes are more than the room has on Monday",
    );
    await asked({ [RESERVE]: "", Staffed: "mon-fri" }, "No hours stand after Monday to Friday.");
  });

  test("hours are changed, whoever was second is told, then it is taken away and put back; the history says who", async ({
    page,
    complaints,
  }) => {
    await add(page, { Name: "Side room", "What it can do": "ultrasound", Staffed: "tue 8-12" });
    await page.getByRole("link", { name: "To the rooms" }).click();
    const change = await row(page, "Side room")
      .getByRole("link", { name: "Change Side room" })
      .getAttribute("href");

    const second = await page.context().newPage();
    await open(second, change ?? "");
    await type(second, { [RESERVE]: "30" });

    await open(page, change ?? "");
    await expect(page.getByLabel("Staffed", { exact: true })).toHaveValue("tue 8-12");
    await type(page, { Staffed: "tue, thu 8-12" });
    await save(page, "Change the room");
    await saved(page);
    await expect(
      page.getByText(
        "Changed Side room. Staffed: Tuesday, Thursday 08:00 to 12:00; before, Tuesday 08:00 to 12:00.",
      ),
    ).toBeVisible();

    await save(second, "Change the room");
    await expect(toMend(second)).toContainText("The rooms were changed since you opened them.");
    await expect(second.getByLabel(RESERVE, { exact: true })).toHaveValue("30");
    await second.close();
    expectOnly(complaints, "422");

    await page.goto(`${change}/take-away`);
    await expectAccessible(page);
    await save(page, "Take it away");
    await saved(page);
    const other = await page.context().newPage();
    await other.goto("/rooms");
    await expect(row(other, "Room 1")).toHaveCount(1);
    await expect(row(other, "Side room")).toHaveCount(0);
    await other.goto(change ?? "");
    await expect(other.getByText("The clinic no longer has this room.")).toBeVisible();

    await undo(page).click();
    await expect(page.getByText(/^Undone: .+ The rooms before stand again\./)).toBeVisible();
    await other.goto("/rooms");
    await expect(row(other, "Side room")).toContainText("Tuesday, Thursday 08:00 to 12:00");
    await other.goto("/rooms/history");
    const versions = other.getByRole("table", { name: /^Versions/ }).getByRole("row");
    await expect(versions.nth(1)).toContainText(/Lorne Leadbeater.*Added Side room\./);
    await expect(versions.nth(2)).toContainText(/Lorne Leadbeater.*Taken away: Side room\./);
    await expect(versions.nth(3)).toContainText("Changed Side room. Staffed: Tuesday, Thursday");
    await expect(versions.last()).toContainText("came with the clinic");
    await other.close();
  });

  test("a form that changes nothing says so, and writes no version", async ({ page }) => {
    await page.goto("/rooms/history");
    const versions = page.getByRole("table", { name: /^Versions/ }).getByRole("row");
    const before = await versions.count();
    await open(page, "/rooms/room-2");
    await save(page, "Change the room");
    await expect(
      page.getByText("The room stands like this already: there was nothing to save."),
    ).toBeVisible();
    await page.goto("/rooms/history");
    await expect(versions).toHaveCount(before);
  });
});

test.describe("for a nurse", () => {
  test.use({ role: "nurse" });

  test("the rooms are there to read, and nothing to change", async ({ page }) => {
    await page.goto("/rooms");
    await expect(row(page, "Treatment room")).toContainText("Tuesday, Friday 13:00 to 16:30");
    await expect(page.locator("main").getByRole("link", { name: /^(Add|Change|Take away)/ })).toHaveCount(0);
    for (const form of ["new", "room-1", "room-1/take-away"]) {
      await page.goto(`/rooms/${form}`);
      await expect(page.getByRole("link", { name: "Go back" })).toBeVisible();
    }
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto("/rooms");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});
