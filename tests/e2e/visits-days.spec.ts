import type { Page } from "@playwright/test";
import { addDays, type Day, day, weekdayOf } from "#shared/day/day.ts";
import { printDay, printWholeDay } from "#shared/day/print-day.ts";
import { expectAccessible } from "#tests/e2e/support/accessibility.ts";
import { type Sender, send } from "#tests/e2e/support/enter-tube.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { formats, sheetsOf } from "#tests/e2e/support/sheets.ts";
import { findByKey, hasFocus } from "#tests/e2e/support/typing.ts";
import { readCalendar } from "#tests/support/read-calendar.ts";

test.use({ role: "nurse" });

const ROOM = "Room 1";

/** The clinic's day, as the page that shows it says: neither the machine's nor the browser's. */
async function todayOf(page: Page): Promise<Day> {
  await page.goto("/visits");
  const marked = await page.getByRole("link", { name: "Day before [" }).getAttribute("href");
  return addDays(day(/on=([\d-]{10})/.exec(marked ?? "")?.[1] ?? ""), 1);
}

/** A Wednesday far ahead, so that nothing of the demo lies there; each asker gets another week. */
const wednesday = (today: Day, week: number): Day => addDays(today, 7 * (20 + week) + 3 - weekdayOf(today));

const idOf = (address: string): string => address.split("/").at(-1) ?? "";

type Booked = { readonly patient: string; readonly tube: string };

/** Books an exchange of that tube, as the form sends it. The visit's page. */
async function book(
  sender: Sender,
  { patient, tube }: Booked,
  texts: Readonly<Record<string, string>>,
): Promise<string> {
  const patientId = idOf(patient);
  const { visitId } = await send<{ visitId: string }>(sender, "visit.booked", {
    patientId,
    lastSeen: 9999,
    tubes: [{ tubeId: idOf(tube), act: "exchange" }],
    urgent: false,
    texts: { room: ROOM, minutes: "40", ...texts },
  });
  return `${patient}/visits/${visitId}`;
}

const roomTable = (page: Page) => page.getByRole("table", { name: new RegExp(`^${ROOM}`) });
/** Waits until the keys of a page are listened to; then nothing has the focus, as on one that was just opened. */
async function listens(page: Page): Promise<void> {
  await findByKey(page);
  await page.evaluate(() => (document.activeElement as HTMLElement).blur());
}

const focused = (page: Page) => page.locator(":focus");

/** Presses a key once the page listens, and waits for what it leads to. */
async function pressTo(page: Page, key: string, says: string): Promise<void> {
  await listens(page);
  await page.keyboard.press(key);
  await expect(page.getByRole("main")).toContainText(says);
}

test("days and weeks are gone through by keys, and nothing typed is taken for one", async ({ page }) => {
  const today = await todayOf(page);
  const heading = page.getByRole("heading", { level: 1 });
  await expect(heading).toHaveText(`Who comes on ${printDay(today)}?`);
  const dayWords = (away: number): string => `Who comes on ${printDay(addDays(today, away))}?`;
  await pressTo(page, "]", dayWords(1));
  await expect(page.getByText("tomorrow", { exact: true })).toBeVisible();
  await pressTo(page, "[", dayWords(0));
  await pressTo(page, "}", dayWords(7));
  await pressTo(page, "=", "Who comes in the week?");
  await expect(page.locator('[aria-current="date"]')).toHaveCount(0);
  await pressTo(page, ".", `${printDay(today)} today`);
  await expect(page.locator('[aria-current="date"]')).toHaveText(printDay(today));
  await pressTo(page, "{", printDay(addDays(today, -7)));
  await expectAccessible(page);

  const field = page.getByLabel("To the day");
  await field.focus();
  await page.keyboard.type("[]{}.=");
  await expect(field).toHaveValue("[]{}.=");
  await field.fill("+9");
  await page.keyboard.press("Enter");
  await page.waitForURL(/on=%2B9/);
  await pressTo(page, "=", dayWords(9));
  await page.goto("/visits?on=31+feb+2027");
  await expect(page.getByRole("alert").filter({ hasText: "Today stands below" })).toContainText(
    "31 feb 2027",
  );
  await expect(field).toHaveValue("31 feb 2027");
});

test("arrows go from visit to free time; a free time moves a visit with day, hour and room filled in", async ({
  page,
  clinic,
  newTube,
}) => {
  const on = wednesday(await todayOf(page), 1);
  const entered = await newTube({ patient: { familyName: "Eveningfold" } });
  const sender = { request: page.request, origin: clinic.origin };
  const visit = await book(sender, entered, { on, at: "9:30" });
  const moves = `${idOf(entered.patient)}/${idOf(visit)}`;
  await page.goto(`/visits?on=${on}&moves=${moves}`);
  await listens(page);
  await expect(page.getByRole("region", { name: "Patient" })).toContainText("Eveningfold");
  await expect(page.getByText(/^A free time moves this visit, which stands on/)).toBeVisible();
  const rows = roomTable(page).locator("tbody tr");
  await expect(rows).toHaveText([
    /^free 08:00 to 09:30/,
    /^09:30 to 10:10.*Eveningfold.*7000\d+, born 4 May 1959/,
    /^free 10:10 to 16:00/,
  ]);
  await expect(rows.nth(1)).toContainText("Left nephrostomy");
  await expect(rows.nth(1)).toContainText(/\d+ to settle, the first by/);
  await expectAccessible(page);

  await page.keyboard.press("ArrowDown");
  await expect(focused(page)).toHaveText("free 08:00 to 09:30");
  await page.keyboard.press("ArrowDown");
  await expect(focused(page)).toHaveText("09:30 to 10:10");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowDown");
  await expect(focused(page)).toHaveText("free 10:10 to 16:00");
  await page.keyboard.press("Enter");
  await page.waitForURL(`${visit}/move?on=${on}&at=10%3A10&room=Room+1`);
  await expect(page.getByLabel("From", { exact: true })).toHaveValue("10:10");
  await expect(page.getByLabel("Room", { exact: true })).toHaveValue(ROOM);
});

test("whom a time is looked for stays in the address from day to week, and a time for nobody leads to the search", async ({
  page,
  newTube,
}) => {
  const on = wednesday(await todayOf(page), 2);
  const { patient, tube } = await newTube();
  await page.goto(`/visits?on=${on}&for=${idOf(patient)}&tubes=${idOf(tube)}:exchange`);
  await expect(page.getByRole("region", { name: "Patient" })).toContainText("Left nephrostomy");
  await pressTo(page, "=", "Who comes in the week?");
  await listens(page);
  const cell = page
    .getByRole("row", { name: new RegExp(printDay(on)) })
    .getByRole("link", { name: "no visit" });
  await page.keyboard.press("ArrowDown");
  for (
    let pressed = 0;
    pressed < 7 && !(await focused(page).textContent())?.includes(printDay(on));
    pressed += 1
  )
    await page.keyboard.press("ArrowDown");
  await page.keyboard.press("ArrowRight");
  expect(await hasFocus(cell.first())).toBe(true);
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/visits\?/);
  await roomTable(page).getByRole("link", { name: "free 08:00 to 16:00" }).click();
  await page.waitForURL(new RegExp(`${patient}/visit\\?tubes=.*at=08%3A00`));
  await expect(page.getByLabel("From", { exact: true })).toHaveValue("08:00");

  await page.goto(`/visits?on=${on}`);
  await roomTable(page).getByRole("link", { name: "free 08:00 to 16:00" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Whose visit is it?");
  await expect(page.getByText(`Free: ${printDay(on)}, 08:00, ${ROOM}.`)).toBeVisible();
});

test("a closed weekday says why and offers nothing; a cancelled visit lies under a fold", async ({
  page,
  clinic,
  newTube,
}) => {
  const on = wednesday(await todayOf(page), 3);
  const entered = await newTube({ patient: { familyName: "Foldaway" } });
  const sender = { request: page.request, origin: clinic.origin };
  const visit = await book(sender, entered, { on, at: "9:30" });
  await send(sender, "visit.noted", {
    patientId: idOf(entered.patient),
    visitId: idOf(visit),
    lastSeen: 9999,
    state: "cancelled",
    texts: { by: "the patient", reason: "unwell" },
  });
  await page.goto(`/visits?on=${on}`);
  await expect(roomTable(page).getByText("Foldaway")).toHaveCount(0);
  await page.getByText("Cancelled or not attended: 1").click();
  await expect(
    page.getByRole("table", { name: /^Cancelled/ }).getByText("cancelled by the patient: unwell"),
  ).toBeVisible();
  await page.goto(`/visits?on=${addDays(on, 3)}`);
  await expect(page.getByText("The clinic is closed: not open on Saturdays.")).toBeVisible();
  await expect(page.getByRole("link", { name: /^free/ })).toHaveCount(0);
});

test("the day sheet prints by room with two identifiers, the tube by its side, and lines for what is urgent", async ({
  page,
  clinic,
  newTube,
}) => {
  const on = wednesday(await todayOf(page), 4);
  const entered = await newTube({
    patient: { familyName: "Sheetworth", number: "70404" },
    tube: { retention: "locking loop" },
  });
  await book({ request: page.request, origin: clinic.origin }, entered, { on, at: "9:30" });
  await page.goto(`/visits?on=${on}`);
  await page.getByRole("link", { name: "Day sheet to print" }).click();
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(`Day sheet, ${printDay(on)}`);
  const row = roomTable(page).getByRole("row", { name: /Sheetworth/ });
  await expect(row).toContainText("09:30");
  await expect(row).toContainText("born 4 May 1959");
  await expect(row).toContainText("70404");
  await expect(row).toContainText("Left nephrostomy, 8 F, locking loop: exchange");
  await expect(row).toContainText("Open: signed order");
  await expect(row).toContainText(
    "Nothing on record: allergies; blood thinners; isolation, last of the list.",
  );
  await expect(roomTable(page).getByRole("row", { name: /^Urgent, kept free/ })).toHaveCount(2);
  await expect(page.getByText("Nothing on this sheet judges them, and no hold is computed.")).toBeVisible();
  await expect(page.getByText("EXAMPLE", { exact: true })).toBeVisible();
  await expectAccessible(page);
  await page.emulateMedia({ media: "print" });
  expect((await row.boundingBox())?.height ?? 0).toBeGreaterThan((18 / 25.4) * 96);
  expect(await sheetsOf(page, "its own")).toBe(1);
});

test("the letter says in large type and plain words when, where, what and what to bring, on two sheets", async ({
  page,
  clinic,
  newTube,
}) => {
  const on = wednesday(await todayOf(page), 5);
  const entered = await newTube({ patient: { familyName: "Lettersby", language: "Welsh" } });
  const visit = await book({ request: page.request, origin: clinic.origin }, entered, { on, at: "14:00" });
  await page.goto(visit);
  await page.getByRole("link", { name: "The letter to the patient" }).click();
  const letter = page.getByRole("article");
  for (const said of [
    `${printWholeDay(on)}, at 2:00 in the afternoon (14:00).`,
    "The tube in your left kidney (Left nephrostomy) is changed for a new one, over a thin wire.",
    "A list of all your medicines, with any blood thinners on it. Do not stop any medicine unless we tell you.",
    "This letter is not for emergencies: nobody sees an answer to it at once.",
    "collapsing or passing out",
  ])
    await expect(letter.getByText(said, { exact: true })).toBeVisible();
  await expect(letter.getByText(/Somebody who takes you home/)).toBeVisible();
  await expect(letter.getByText("555 0100").first()).toBeVisible();
  const forStaff = page.getByText(
    "The patient speaks Welsh. Nobody has asked whether an interpreter is needed.",
  );
  await expect(forStaff).toBeVisible();
  await expectAccessible(page);
  await page.emulateMedia({ media: "print" });
  await expect(forStaff).toBeHidden();
  // 14 pt at 96 px to the inch.
  const smallest = await letter.evaluate((article) =>
    Math.min(
      ...[...article.querySelectorAll("p, li, th, td, h2, h3")].map((one) =>
        Number.parseFloat(getComputedStyle(one).fontSize),
      ),
    ),
  );
  expect(smallest).toBeGreaterThanOrEqual((14 * 96) / 72 - 0.01);
  for (const format of formats) expect(await sheetsOf(page, format)).toBe(2);
});

test("a letter about a visit elsewhere says so, and there is none about a cancelled one", async ({
  page,
  clinic,
  newTube,
}) => {
  const on = wednesday(await todayOf(page), 6);
  const entered = await newTube();
  const sender = { request: page.request, origin: clinic.origin };
  const elsewhere = { on, at: "", room: "", minutes: "", elsewhere: "the day ward" };
  const visit = await book(sender, entered, elsewhere);
  await page.goto(`${visit}/letter`);
  const letter = page.getByRole("article");
  await expect(
    letter.getByText(`${printWholeDay(on)}. The time is not in our record: ask there.`),
  ).toBeVisible();
  await expect(letter.getByText("the day ward. This visit is not in our clinic.")).toBeVisible();
  await send(sender, "visit.noted", {
    patientId: idOf(entered.patient),
    visitId: idOf(visit),
    lastSeen: 9999,
    state: "cancelled",
    texts: { by: "the ward" },
  });
  await page.reload();
  await expect(
    page.getByText("This visit is cancelled by the ward: there is no letter for it."),
  ).toBeVisible();
  await expect(letter).toHaveCount(0);
});

test("the calendar file of all visits is taken from the page, without whose they are (RFC 5545)", async ({
  page,
  clinic,
  newTube,
}) => {
  const on = wednesday(await todayOf(page), 7);
  const entered = await newTube({ patient: { familyName: "Unnamedly", givenName: "Zed", number: "70707" } });
  const sender = { request: page.request, origin: clinic.origin };
  const visit = await book(sender, entered, { on, at: "9:30" });
  const take = async () => {
    const answer = await page.request.get("/api/visits", { headers: { origin: clinic.origin } });
    expect(answer.status()).toBe(200);
    expect(answer.headers()["content-type"]).toBe("text/calendar; charset=utf-8; method=PUBLISH");
    expect(answer.headers()["cache-control"]).toContain("no-store");
    const text = await answer.text();
    for (const told of ["Unnamedly", "Zed", "70707", "1959", idOf(entered.patient), idOf(entered.tube)])
      expect(text.replaceAll("\r\n ", "")).not.toContain(told);
    return readCalendar(text).find(({ uid }) => uid === `${idOf(visit)}@dwellbook`);
  };
  const booked = await take();
  expect(booked).toMatchObject({ summary: "exchange, 1 tube", location: ROOM, status: "CONFIRMED" });

  const about = { patientId: idOf(entered.patient), visitId: idOf(visit), lastSeen: 9999 };
  const texts = { on: addDays(on, 1), at: "10:00", room: ROOM, minutes: "40" };
  await send(sender, "visit.moved", { ...about, urgent: false, texts });
  const moved = await take();
  expect(moved?.sequence).toBeGreaterThan(booked?.sequence ?? Number.POSITIVE_INFINITY);
  expect(moved?.startText.slice(0, 10)).toBe(addDays(on, 1));
  await send(sender, "visit.noted", { ...about, state: "cancelled", texts: { by: "the ward" } });
  expect(await take()).toMatchObject({ status: "CANCELLED" });

  await page.goto("/visits");
  const file = page.waitForEvent("download");
  await page.getByRole("link", { name: "Calendar file of all visits from today on" }).click();
  expect((await file).suggestedFilename()).toBe("visits.ics");
});
