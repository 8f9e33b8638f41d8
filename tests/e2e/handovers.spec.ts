import type { Page } from "@playwright/test";
import { serveClinic } from "#tests/e2e/support/clinic-server.ts";
import { enterTube } from "#tests/e2e/support/enter-tube.ts";
import { openOfPatient, pressUndo, record, undoNewest } from "#tests/e2e/support/record.ts";
import { expect, expectOnly, signIn, test } from "#tests/e2e/support/test.ts";
import { open, save, toMend, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const nextStep = (page: Page, name: string) => page.getByRole("heading", { name, exact: true });

test("handed over stays here until a named person accepts it, and comes back when that is undone", async ({
  page,
  newTube,
}) => {
  const { patient, tube } = await newTube();
  await record(page, `${tube}/record/handed-over`, {
    act: "Hand the tube over",
    typed: { To: "the urology service", "Person asked": "Dr. Orla Invented" },
  });
  await page.goto(tube);
  await expect(page.getByText("handed over, accepted by nobody yet")).toBeVisible();
  await page.goto("/");
  await page.getByRole("heading", { name: "Loose ends" }).click();
  await expect(
    page.getByText("Handed over to the urology service, Dr. Orla Invented asked.").first(),
  ).toBeVisible();

  await open(page, `${tube}/record/accepted-elsewhere`);
  await save(page, "Record that the care was accepted elsewhere");
  await expect(toMend(page)).toContainText("Type the name of who accepted it.");
  await type(page, { "Accepted by": "Dr. Orla Invented" });
  await save(page, "Record that the care was accepted elsewhere");
  await expect(page.getByText("This record has ended: nothing is open.")).toBeVisible();
  await undoNewest(page, patient);
  await page.goto(tube);
  await expect(page.getByText("handed over, accepted by nobody yet")).toBeVisible();
});

test("a transfer asks for what must be found out until the record knows it", async ({ page, newTube }) => {
  const { tube } = await newTube();
  await record(page, `${tube}/record/transferred`, {
    act: "Record a transfer",
    typed: { "From or to": "Far Dale General", "To find out": "fixation", "Ask whom": "ward 3" },
  });
  await page.goto(tube);
  await page.getByText("Find out", { exact: true }).click();
  await expect(page.getByText("To be found out after the transfer: fixation; ask ward 3.")).toBeVisible();
  await page.getByRole("link", { name: "Note facts of the tube" }).first().click();
  await record(page, `${tube}/record/facts-noted`, {
    act: "Note facts of the tube",
    typed: { "Fixation at the skin": "suture" },
  });
  await page.goto(tube);
  await expect(page.getByText("To be found out after the transfer")).toHaveCount(0);
});

test("hospice: a clinician decides until when, on days to come; the decision stands on the patient's page", async ({
  page,
  newTube,
}) => {
  const { patient, tube } = await newTube();
  const form = `${patient}/record/hospice-decided`;
  const act = "Decide what goes on in hospice";
  await open(page, form);
  await page.getByLabel("Calls", { exact: true }).selectOption("stop");
  await page.getByLabel("Exchanges and reviews").selectOption("stop");
  await type(page, { Until: "yesterday", "Decided by": "Dr. Orla Invented" });
  await save(page, act);
  await expect(toMend(page)).toContainText("This day lies before the day of the decision.");
  await type(page, { Until: "+90" });
  await save(page, act);
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeVisible();
  await page.goto(tube);
  await expect(nextStep(page, "Hospice: decide")).toBeVisible();
  await page.goto(patient);
  await expect(openOfPatient(page)).toContainText("calls stop, exchanges stop");
  await expect(openOfPatient(page).getByRole("link", { name: act })).toBeVisible();
});

test("a death stops everything at once, and undone everything stands again", async ({ page, newTube }) => {
  const { patient, tube } = await newTube();
  await record(page, `${patient}/record/died`, { act: "Record a death" });
  await page.goto(patient);
  await expect(page.getByText("Every record has ended and no call is due.")).toBeVisible();
  await undoNewest(page, patient);
  await page.goto(tube);
  await expect(nextStep(page, "Call")).toBeVisible();
});

test("out and undecided asks which way on; a piece left inside stays open until it is out or a clinician decides", async ({
  page,
  newTube,
}) => {
  const { patient, tube } = await newTube();
  await record(page, `${tube}/record/fell-out`, {
    act: "Record that it fell out",
    chosen: { "It came out whole": "No" },
  });
  await page.goto(tube);
  await expect(nextStep(page, "Tube out: decide")).toBeVisible();
  await record(page, `${tube}/record/not-replaced`, {
    act: "Record that it is not replaced",
    typed: { "Decided by": "Dr. Orla Invented", Reason: "drains by itself" },
  });
  await page.goto(tube);
  await expect(nextStep(page, "Fragment retained: decide")).toBeVisible();
  await page
    .getByRole("navigation", { name: "Ways to go on" })
    .getByRole("link", { name: "Record a decision that ends the follow-up" })
    .click();
  await record(page, `${tube}/record/follow-up-ended`, {
    act: "Record a decision that ends the follow-up",
    typed: { "Decided by": "Dr. Orla Invented", Reason: "grown in" },
  });
  await page.goto(tube);
  await expect(page.getByText("This record has ended: nothing is open.")).toBeVisible();
  await undoNewest(page, patient);
  await page.goto(tube);
  await expect(nextStep(page, "Fragment retained: decide")).toBeVisible();
});

test("a chain of conversions is undone from its end", async ({ page, newTube, complaints }) => {
  const { patient, tube } = await newTube();
  const act = "Record a conversion";
  await record(page, `${tube}/record/converted`, {
    act,
    typed: { "Converted to": "nephroureteral", Size: "8 f" },
  });
  await page.getByRole("link", { name: "To the tube" }).click();
  await page.waitForURL((url) => url.pathname.startsWith("/tubes/") && !url.pathname.endsWith("/converted"));
  const second = new URL(page.url()).pathname;
  await record(page, `${second}/record/converted`, {
    act,
    typed: { "Converted to": "jj", Size: "6 f", Plan: "remove +60" },
  });
  await page.goto(patient);
  await expect(page.getByRole("rowheader", { name: /Left ureteral stent/ })).toBeVisible();
  await page.locator("#story").getByRole("link", { name: "Undo" }).nth(1).click();
  await pressUndo(page, page.getByText("What was recorded later rests on this entry: converted."));
  expectOnly(complaints, "422");
  await undoNewest(page, patient);
  await page.goto(second);
  await expect(page.getByText("This record has ended")).toHaveCount(0);
});

test("hard case 22: urology took it out, by telephone, and which of the two it was comes later", async ({
  page,
  pageOf,
  newTube,
}) => {
  const { patient, tube } = await newTube();
  await record(page, `${patient}/record/placed`, {
    act: "Record a tube",
    typed: { Kind: "jj l", Size: "6 f", "Placed, or last exchanged, on": "-20" },
  });
  const caller = await pageOf("caller");
  await caller.goto(patient);
  await caller.getByRole("link", { name: "Record that one of several was reported out" }).click();
  await record(caller, `${patient}/record/reported-out`, {
    act: "Record that one of several was reported out",
    typed: { "Told by": "urology, by telephone", "Taken out on": "yesterday" },
  });

  await page.goto(tube);
  await expect(nextStep(page, "It may be out")).toBeVisible();
  // The call is one for both tubes: it stands with the patient.
  await page.getByRole("link", { name: "Call this patient" }).click();
  await page.waitForURL(`**${patient}/call`);
  await page.goto(patient);
  await expect(openOfPatient(page)).toContainText(
    "Left nephrostomy (tube 1), or Left ureteral stent (tube 2)",
  );
  await openOfPatient(page)
    .getByRole("link", { name: "Record a removal: Left ureteral stent (tube 2)" })
    .click();
  await type(page, { "Told by": "urology" });
  await expect(
    page.getByText("Which of the two? Also in by this record: Left nephrostomy (tube 1)."),
  ).toBeVisible();
  await page.getByLabel("It came out whole").selectOption("yes");
  await type(page, { "Removed on": "yesterday" });
  await save(page, "Record a removal");
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeVisible();
  await page.goto(patient);
  await expect(openOfPatient(page)).toHaveCount(0);
  await expect(page.getByText("told removed, not confirmed")).toBeVisible();
  await undoNewest(page, patient);
  await page.goto(tube);
  await expect(nextStep(page, "It may be out")).toBeVisible();
});

test("a step that is somebody's by name passes on before the account closes", async ({ browser }) => {
  // A clinic of its own: in the one of the other tests nobody leaves.
  const clinic = await serveClinic();
  const context = await browser.newContext({ baseURL: clinic.origin });
  const page = await context.newPage();
  await signIn(page, "lead");
  const { tube } = await enterTube({ request: page.request, origin: clinic.origin });
  await page.goto("/staff");
  const physician = page
    .getByRole("row", { name: /physician/ })
    .first()
    .getByRole("rowheader");
  const leaves = (await physician.textContent()) ?? "";
  await open(page, `${tube}/record/step-assigned`);
  await page.getByLabel("Step", { exact: true }).selectOption({ label: "Exchange" });
  const whose = page.getByLabel("Goes to", { exact: true });
  const choices = await whose.getByRole("option").allInnerTexts();
  await whose.selectOption({ label: choices.find((choice) => choice.startsWith(leaves)) ?? "" });
  await save(page, "Give a step to someone");
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toBeVisible();
  await page.goto(tube);
  await expect(page.getByText(`Owner: ${leaves}`)).toHaveCount(1);

  await page.goto("/staff");
  await page
    .getByRole("row", { name: new RegExp(leaves) })
    .getByRole("link", { name: "Close the account" })
    .click();
  await page.waitForURL(/close$/);
  await open(page, new URL(page.url()).pathname);
  await save(page, "Close the account");
  await expect(page.getByText(/The account is closed\. [1-9]\d* open steps? passed on\./)).toBeVisible();
  await page.goto(tube);
  await expect(page.getByText(`Owner: ${leaves}`)).toHaveCount(0);
  await expect(page.getByRole("group").filter({ hasText: "Exchange" })).toContainText(
    "Owner: scheduling nurse",
  );
  await context.close();
  await clinic.stop();
});
