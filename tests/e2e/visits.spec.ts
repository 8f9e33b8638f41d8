import type { Page } from "@playwright/test";
import { send } from "#tests/e2e/support/enter-tube.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { expectOnly } from "#tests/e2e/support/test.ts";
import { findByKey, open, save, storyRows, toMend, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const MOST_KEYS = 25;
const booked = (page: Page) => page.getByText("The visit is booked.");
const slots = (page: Page) => page.getByRole("group", { name: /Three slots/ }).getByRole("radio");

/** A page with slots and a slot to type: both forms listen to keys. */
async function openSlots(page: Page, address: string): Promise<void> {
  await page.goto(address);
  for (const form of await page.locator("form[method=post] button[type=submit]").all())
    await expect(form).toBeEnabled();
}

const stands = (page: Page, word: string) =>
  page.locator("dt", { hasText: new RegExp(`^${word}$`) }).locator("xpath=following-sibling::dd[1]");

test("a patient rings and gets one of three slots in under 25 keys", async ({ page, newTube }) => {
  const { patient } = await newTube({
    patient: { number: "00931", familyName: "Ringwell" },
    tube: { when: "-70" },
  });
  await page.goto("/");
  let keys = 0;
  const press = async (key: string): Promise<void> => {
    keys += 1;
    await page.keyboard.press(key);
  };
  await findByKey(page);
  keys += 1;
  for (const digit of "00931") await press(digit);
  await press("Enter");
  await page.waitForURL(patient);
  await expect(page.getByRole("link", { name: "Book a visit: three slots" })).toBeVisible();
  await press("v");
  await expect(slots(page)).toHaveCount(3);
  await expect(slots(page).first()).toBeFocused();
  await expect(page.getByRole("button", { name: "Book this slot" })).toBeEnabled();
  await press("2");
  await expect(slots(page).nth(1)).toBeChecked();
  await press("Enter");
  await expect(booked(page)).toBeVisible();
  expect(keys).toBeLessThanOrEqual(MOST_KEYS);

  await test.step("what was taken is taken back by its undo", async () => {
    await page.getByRole("button", { name: "Undo" }).click();
    await page.goto(patient);
    await expect(storyRows(page, /Visit booked/)).toHaveCount(1);
    await expect(page.getByRole("link", { name: /^Visit / })).toHaveCount(0);
  });
});

test("each slot says its place in the window, what it leaves for urgent visits, and why not sooner", async ({
  page,
  newTube,
}) => {
  const { patient } = await newTube({ tube: { when: "-70" } });
  await page.goto(`${patient}/visit`);
  const group = page.getByRole("group", { name: /Three slots/ });
  await expect(group.getByText(/^Inside the window; keeps what is kept for urgent visits/)).toHaveCount(3);
  await expect(group.getByText(/^Why not sooner: ./)).toHaveCount(3);
  await expect(stands(page, "Takes")).toContainText(
    "exchange: 30 min. Together 30 min, in a room with fluoroscopy",
  );
});

test("bilateral nephrostomies out of step land in one visit, inside the earlier latest date", async ({
  page,
  newTube,
  clinic,
}) => {
  const { patient } = await newTube({ tube: { when: "-75" } });
  await send({ request: page.request, origin: clinic.origin }, "record.tube", {
    lastSeen: 99,
    patientId: patient.split("/").at(-1),
    texts: { kind: "pcn r", size: "8 f", when: "-65", takes: ".035 in" },
  });
  await openSlots(page, `${patient}/visit`);
  await expect(page.getByLabel(/^Left nephrostomy/)).toHaveValue("exchange");
  await expect(page.getByLabel(/^Right nephrostomy/)).toHaveValue("exchange");
  await expect(stands(page, "Takes")).toContainText("further tube: 20 min. Together 50 min");
  await expect(stands(page, "Window")).toContainText("the latest date is that of Left nephrostomy");
  await expect(page.getByText(/^Inside the window/)).toHaveCount(3);
  await page.getByRole("button", { name: "Book this slot" }).click();
  await expect(booked(page)).toBeVisible();
  await page.goto(patient);
  await expect(page.getByRole("link", { name: /^Visit / })).toHaveCount(1);
  await expect(storyRows(page, /Visit booked: tube 1 exchange and tube 2 exchange, .* 50 min/)).toHaveCount(
    1,
  );
});

test("a slot in the past, a closed day, a room that is not staffed: a sentence beside the field, and nothing typed is lost", async ({
  page,
  newTube,
  complaints,
}) => {
  const { patient } = await newTube({ tube: { when: "-70" } });
  await openSlots(page, `${patient}/visit?on=1%20jan%202027&at=7:00&room=Room%201`);
  await type(page, { Day: "1 jan 2020", From: "9:30" });
  await page.getByLabel("Room", { exact: true }).selectOption("Room 1");
  await save(page, "Book the visit");
  await expect(toMend(page)).toContainText("is past. Type a day and time that are still to come.");
  await expect(page.getByLabel("Day", { exact: true })).toHaveValue("1 jan 2020");
  await expect(page.getByLabel("From", { exact: true })).toHaveValue("9:30");
  await type(page, { Day: "+14", From: "5:30" });
  await save(page, "Book the visit");
  await expect(toMend(page)).toContainText("Room 1 is not staffed for all of that time");
  await type(page, { From: "half ten" });
  await save(page, "Book the visit");
  await expect(toMend(page)).toContainText('"half ten" is not a time of day. Type it like 9:30 or 14:00.');
  expectOnly(complaints, "422 (Unprocessable Entity)");
  await page.goto(patient);
  await expect(storyRows(page, /Visit booked/)).toHaveCount(0);
});

test("booked elsewhere counts as booked, and a second visit for the tube is refused", async ({
  page,
  newTube,
}) => {
  const { patient } = await newTube({ tube: { when: "-70" } });
  await openSlots(page, `${patient}/visit`);
  await page.getByText("Another day or time, or booked elsewhere").click();
  await page.getByText("More that is known").click();
  await type(page, { Day: "+14", From: "10:00", "Booked elsewhere": "Far Dale General" });
  await save(page, "Book the visit");
  await expect(booked(page)).toBeVisible();
  await page.goto(patient);
  await expect(page.getByRole("link", { name: /^Visit elsewhere .*Far Dale General/ })).toBeVisible();
  const first = await page
    .getByRole("link", { name: /^Left nephrostomy/ })
    .first()
    .getAttribute("href");
  await page.goto(`${patient}/visit?first=${first?.split("/").at(-1)}`);
  await expect(page.getByRole("status")).toContainText("has a visit on");
});

test("a visit is prepared, confirmed, moved and cancelled, each a sentence of the story", async ({
  page,
  newTube,
}) => {
  const { patient } = await newTube({ tube: { when: "-70" } });
  await openSlots(page, `${patient}/visit`);
  await page.getByRole("button", { name: "Book this slot" }).click();
  await page.getByRole("link", { name: "To the visit" }).click();
  await expect(page.getByRole("heading", { name: "How does this visit stand?" })).toBeVisible();
  const visit = page.url();

  await open(page, `${visit}/settle`);
  await type(page, { "Blood thinners, and who agreed the plan": "settled" });
  await save(page, "Note what is settled");
  await expect(toMend(page)).toContainText("who agreed the plan");
  await type(page, {
    "Blood thinners, and who agreed the plan": "settled: none taken, Dr. Petra Invented",
    Escort: "no",
  });
  await save(page, "Note what is settled");
  await expect(page.getByText("Note what is settled: saved.")).toBeVisible();
  await page.goto(visit);
  const row = page.getByRole("row", { name: /^Blood thinners/ });
  await expect(row).toContainText("settled: none taken, Dr. Petra Invented");
  await expect(page.getByRole("row", { name: /^Labs/ })).toContainText("open");

  await open(page, `${visit}/confirm`);
  await save(page, "Note that it is confirmed");
  await expect(page.getByText("Note that it is confirmed: saved.")).toBeVisible();

  await openSlots(page, `${visit}/move`);
  await expect(slots(page)).toHaveCount(3);
  await page.keyboard.press("3");
  await page.keyboard.press("Enter");
  await expect(page.getByText("The visit is moved.")).toBeVisible();
  await page.goto(visit);
  await expect(stands(page, "How it stands")).toContainText("Booked. Moved 1 time.");

  await open(page, `${visit}/cancel`);
  await save(page, "Cancel the visit");
  await expect(toMend(page)).toContainText("who cancelled it");
  await type(page, { "Cancelled by": "the patient" });
  await save(page, "Cancel the visit");
  await expect(page.getByText("Cancel the visit: saved.")).toBeVisible();
  await page.goto(patient);
  for (const said of [
    /Visit confirmed/,
    /Visit moved/,
    /Visit cancelled: by the patient/,
    /Before the visit: escort: does not apply/,
  ])
    await expect(storyRows(page, said)).toHaveCount(1);
});

test("a tube that falls out: its visit turns urgent, and the soonest slots come first with hours out and the age of the tract", async ({
  page,
  newTube,
  clinic,
}) => {
  const { patient, tube } = await newTube({ tube: { when: "-9" } });
  const sender = { request: page.request, origin: clinic.origin };
  const patientId = patient.split("/").at(-1);
  await openSlots(page, `${patient}/visit?first=${tube.split("/").at(-1)}`);
  await page.keyboard.press("Enter");
  await expect(booked(page)).toBeVisible();
  await send(sender, "record.fellOut", {
    lastSeen: 99,
    patientId,
    tubeId: tube.split("/").at(-1),
    texts: { when: "today", whole: "yes" },
  });
  await page.goto(tube);
  const link = page.getByRole("link", { name: /^Visit / });
  await expect(link.locator("xpath=..")).toContainText("urgent, booked");
  await link.click();
  await expect(stands(page, "When and where")).toContainText("urgent");
  const visit = page.url();
  await openSlots(page, `${visit}/move`);
  await expect(
    page.getByText(/^Out for up to \d+ hours, the time is not known; tract 9 days, .*Immature/),
  ).toBeVisible();
  await expect(page.getByText(/^No window can be told: the sooner the better/).first()).toBeVisible();
  await page.keyboard.press("Enter");
  await expect(page.getByText("The visit is moved.")).toBeVisible();
});

test("recording the exchange as it was planned is what makes the visit done", async ({ page, newTube }) => {
  const { patient, tube } = await newTube({ tube: { when: "-80" } });
  await open(page, `${tube}/record/exchange-planned`);
  await type(page, {
    Wire: ".035 in",
    "Tube to come": "10 f",
    "The tube to come takes a wire of (label)": ".038 in",
  });
  await save(page, "Plan the exchange");
  await expect(page.getByText("Plan the exchange: saved.")).toBeVisible();
  await openSlots(page, `${patient}/visit?on=today&at=&room=`);
  await type(page, { "Booked elsewhere": "the ward's own list" });
  await save(page, "Book the visit");
  await expect(booked(page)).toBeVisible();
  await page.getByRole("link", { name: "To the visit" }).click();
  await page.getByRole("link", { name: /^Record an upsize: Left nephrostomy/ }).click();
  await expect(page.getByLabel("New size")).toHaveValue("10 F");
  await expect(page.getByLabel("Takes a wire of (label)")).toHaveValue("0.038 in");
  await open(page, page.url());
  await save(page, "Record an upsize");
  await expect(page.getByText("Record an upsize: saved.")).toBeVisible();
  await page.goto(patient);
  await expect(page.getByText(/: done\./)).toBeVisible();
  await expect(storyRows(page, /Upsized: 10 F, takes 0\.038 in/)).toHaveCount(1);
});

test("three slots are one key away from a call, also while it is typed, and what was typed is kept", async ({
  page,
  newTube,
}) => {
  const { patient } = await newTube({ tube: { when: "-70" } });
  await open(page, `${patient}/call`);
  await type(page, { "What else was said": "Asks for a day." });
  // Kept on the server within three seconds of the last key.
  await page.waitForResponse((answer) => answer.url().includes("draft.save") && answer.ok());
  await page.getByLabel("What else was said", { exact: true }).focus();
  await page.keyboard.press("F2");
  await page.waitForURL(`**${patient}/visit`);
  await expect(slots(page)).toHaveCount(3);
  await page.goto(`${patient}/call`);
  await expect(page.getByLabel("What else was said", { exact: true })).toHaveValue("Asks for a day.");
});
