import type { Page } from "@playwright/test";
import { type EnteredTube, send } from "#tests/e2e/support/enter-tube.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { record } from "#tests/e2e/support/record.ts";
import { open, save, saved, storyRows, toMend, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const idOf = ({ patient }: EnteredTube): string => patient.split("/").at(-1) ?? "";
const outcome = (page: Page) => page.getByLabel("The call", { exact: true });
const callOf = ({ patient }: EnteredTube): string => `${patient}/call`;
const main = (page: Page) => page.getByRole("main");

test("an uneventful call is made by keyboard in at most 80 keys, with its output", async ({
  page,
  newTube,
}) => {
  const entered = await newTube();
  await open(page, `${entered.tube}/record/reading`);
  const reading = "350\tnone\n";
  for (const key of reading) await page.keyboard.press(names[key] ?? key);
  await expect(page.getByText("The emptying is logged.")).toBeVisible();

  await open(page, callOf(entered));
  await expect(outcome(page)).toBeFocused();
  let pressed = 0;
  const press = async (key: string): Promise<void> => {
    pressed += 1;
    await page.keyboard.press(names[key] ?? key);
  };
  for (const key of "r\t\t\t\t") await press(key);
  const questions = page.locator("select[name^=ask-]");
  await expect(questions.first()).toBeFocused();
  const asked = await questions.count();
  for (let n = 0; n < asked; n += 1) {
    const name = await page.evaluate(() => document.activeElement?.getAttribute("name") ?? "");
    await press(/draining|flush/.test(name) ? "y" : "n");
    await press("\t");
  }
  await press("\n");
  await saved(page);
  // The keys of its output, and the three that lead there and back.
  expect(pressed + reading.length + 3).toBeLessThanOrEqual(80);
  await page.goto(entered.patient);
  await expect(storyRows(page, /Rang the patient: reached the patient/)).toHaveCount(1);
  await expect(storyRows(page, /Red flag/)).toHaveCount(0);
});

test("one through an interpreter about two tubes: each has its own questions, a stent none about output", async ({
  page,
  newTube,
  request,
  clinic,
}) => {
  const entered = await newTube({ patient: { language: "Farsi", needsInterpreter: "yes" } });
  const texts = { kind: "jj r", size: "6 f", when: "-10" };
  await send({ request, origin: clinic.origin }, "record.tube", {
    lastSeen: 99,
    patientId: idOf(entered),
    texts,
  });
  await open(page, callOf(entered));
  await expect(main(page)).toContainText("Interpreter: Farsi");
  await outcome(page).selectOption({ label: "Reached the patient" });
  const stent = page.getByRole("group", { name: "Right ureteral stent" });
  await expect(stent.getByRole("combobox")).toHaveCount(1);
  await expect(
    page.getByRole("group", { name: "Left nephrostomy" }).getByLabel("Is anything draining?"),
  ).toBeVisible();
  await stent.getByRole("combobox").selectOption({ label: "no" });
  await expect(stent.getByRole("link", { name: "Record that they were told" })).toBeVisible();
  await type(page, { "Through an interpreter": "Farsi, by telephone" });
  await save(page, "Save the call");
  await saved(page);
  await page.goto(entered.patient);
  await expect(storyRows(page, /through Farsi, by telephone/)).toHaveCount(1);
});

test("a voicemail comes back on another day and at another time; the ladder goes on to a letter and a physician", async ({
  page,
  newTube,
}) => {
  const entered = await newTube({ tube: { when: "-1" } });
  const tries = [
    { outcome: "Voicemail", to: "The patient" },
    { outcome: "No answer", to: "The patient" },
    { outcome: "Wrong number", to: "The patient" },
    { outcome: "No answer", to: "The alternate contact" },
  ] as const;
  for (const [place, { outcome: came, to }] of tries.entries()) {
    await open(page, callOf(entered));
    if (place > 0) await expect(main(page)).toContainText(/Tried: voicemail/);
    await outcome(page).selectOption({ label: came });
    await page.getByLabel("Rung", { exact: true }).selectOption({ label: to });
    // Each an hour after the other, on one day: a try is a try.
    await type(page, { "On the number": place === 2 ? "555 0199" : "", "Called on": `today 0${place}:10` });
    await save(page, "Save the call");
    await saved(page);
  }
  await page.goto(entered.patient);
  await expect(main(page)).toContainText("555 0199 is somebody else's");
  await expect(main(page)).toContainText("Send a letter");
  await record(page, `${entered.patient}/record/letter-sent`, {
    act: "Record a letter",
    chosen: { "The letter went to": "The patient" },
  });
  await record(page, `${entered.patient}/record/letter-sent`, {
    act: "Record a letter",
    chosen: { "The letter went to": "The referrer and the family doctor" },
  });
  await page.goto(entered.patient);
  await expect(main(page)).toContainText("Not reached: decide");
  await expect(main(page)).toContainText("Owner: physician");
});

test("a fever under a cap is a red flag at once, handed to a named person, and closed with what was done", async ({
  page,
  newTube,
  request,
  clinic,
}) => {
  const entered = await newTube({ patient: { familyName: "Capwell" } });
  const tubeId = entered.tube.split("/").at(-1);
  const known = { lastSeen: 99, patientId: idOf(entered), tubeId };
  await send({ request, origin: clinic.origin }, "record.capped", {
    ...known,
    texts: { covers: "the ward", bagAtHome: "yes" },
  });
  await open(page, callOf(entered));
  await outcome(page).selectOption({ label: "Reached the patient" });
  await page.getByLabel(/^A temperature of 38/).selectOption({ label: "yes" });
  await expect(page.getByRole("status").filter({ hasText: "Red flag, same day" })).toContainText(
    "reconnect to bag",
  );
  await save(page, "Save the call");
  await expect(toMend(page)).toContainText("type the name of the person");
  await type(page, { "Red flags handed to": "Dr Example" });
  await save(page, "Save the call");
  await saved(page);
  await page.getByRole("link", { name: "Red flag: record what was done" }).click();
  await type(page, { "What was done": "uncapped, seen", "By whom": "Dr Example" });
  await save(page, "Record what was done");
  await saved(page);
  await page.goto(entered.patient);
  await expect(page.getByRole("region", { name: "Red flag" })).toHaveCount(0);
});

test("fever on chemotherapy reads emergency services; not knowing of it is asked", async ({
  page,
  newTube,
  request,
  clinic,
}) => {
  const entered = await newTube();
  await open(page, callOf(entered));
  await outcome(page).selectOption({ label: "Reached the patient" });
  const fever = page.getByLabel(/^A temperature of 38/);
  const said = page.getByRole("status").filter({ hasText: "Red flag" });
  await fever.selectOption({ label: "yes" });
  await expect(said).toContainText("Not known: on chemotherapy");
  await send({ request, origin: clinic.origin }, "record.conditions", {
    lastSeen: 99,
    patientId: idOf(entered),
    texts: { chemotherapy: "yes" },
  });
  await open(page, callOf(entered));
  await outcome(page).selectOption({ label: "Reached the patient" });
  await fever.selectOption({ label: "yes" });
  await expect(said).toContainText("Red flag, emergency services");
});

test("a call that one caller began and left is taken up by another, with what was typed", async ({
  page,
  newTube,
  pageOf,
  clinic,
}) => {
  const entered = await newTube();
  const content = { actId: "begun-by-somebody-else", texts: { note: "Asked for the daughter." } };
  const caller = await pageOf("caller");
  const kept = await caller.request.post(`${clinic.origin}/api/trpc/draft.save`, {
    data: { form: "calls.saved", subject: idOf(entered), content },
    headers: { origin: clinic.origin },
  });
  expect(kept.status(), await kept.text()).toBe(200);
  await page.goto(callOf(entered));
  await page.getByRole("link", { name: "Go on with what is typed there" }).click();
  await expect(page.getByLabel("What else was said", { exact: true })).toHaveValue("Asked for the daughter.");
});

const names: Readonly<Record<string, string>> = { "\t": "Tab", "\n": "Enter" };
