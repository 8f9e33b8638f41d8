import { readdirSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { patientProcedures, slugOf, tubeProcedures } from "#app/record/procedures.ts";
import { root } from "#server/commands/root.mjs";
import {
  expectAccessible,
  expectContrastInTheDark,
  expectPlainPrint,
  expectReflow,
} from "#tests/e2e/support/accessibility.ts";
import { type DemoAddresses, withDemoAddresses } from "#tests/e2e/support/demo-addresses.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";

test.describe.configure({ mode: "parallel" });
test.use({ role: "lead" });

type Screen = readonly [name: string, address: (demo: DemoAddresses) => string];

const tubeForms = (Object.keys(tubeProcedures) as (keyof typeof tubeProcedures)[]).map(
  (form): Screen => [`the form "${form}"`, ({ tube }) => `${tube("Mossgate")}/record/${slugOf(form)}`],
);

const patientForms = (Object.keys(patientProcedures) as (keyof typeof patientProcedures)[]).map(
  (form): Screen => [
    `the form "${form}"`,
    ({ patient }) => `${patient("Brackenfold")}/record/${slugOf(form)}`,
  ],
);

/** Every page of the program, with what the demo has to show on it. */
const screens: readonly Screen[] = [
  ["Today", () => "/"],
  ["one part of Today", () => "/today/undated"],
  ["Exchanges", () => "/exchanges"],
  ["a day of visits", () => "/visits"],
  ["a week of visits", () => "/visits/week"],
  ["the call list", () => "/calls"],
  ["calls to come", () => "/calls/coming"],
  ["the call list to print", () => "/calls/paper?share=1&of=2"],
  ["the day's closing list", () => "/calls/closing"],
  ["a call", ({ patient }) => `${patient("Brackenfold")}/call`],
  ["the figures", () => "/figures"],
  ["whoever is behind a figure", () => "/figures/trying?days=90"],
  ["the lists", () => "/lists"],
  ["a list in its own order", () => "/lists/past-latest"],
  ["a list of visits", () => "/lists/unconfirmed"],
  ["the day sheet", () => "/visits/sheet"],
  ["whose a free time is to be", () => "/patients?on=2026-11-11&at=10:00&room=Room+1"],
  ["Patients", () => "/patients"],
  ["whom the finder means", () => "/find"],
  ["the clinic's books", () => "/books"],
  ["sizes", () => "/sizes"],
  ["the keys", () => "/keys"],
  ["the shelf", () => "/shelf"],
  ["a type for the shelf", () => "/shelf/new"],
  ["one type of the shelf", ({ type }) => type("Drain 12, tapered")],
  ["a sheet for the shelf", () => "/shelf/sheet"],
  ["the protocol", () => "/protocol"],
  ["the audit", () => "/audit"],
  ["the export", () => "/export"],
  ["bringing in a list", () => "/import"],
  ["the hospital's bookings", () => "/visits/hospital-list"],
  ["proposed dates", () => "/dates"],
  ["the draft of the protocol", () => "/protocol/draft"],
  ["an interval of the draft", () => "/protocol/draft/row?address=intervals/cholecystostomy"],
  ["a row of the draft with lists in lists", () => "/protocol/draft/row?address=bleeding"],
  ["a row to add to the draft", () => "/protocol/draft/row?address=redFlags"],
  ["why the draft changes the table", () => "/protocol/draft/note"],
  ["a file for the draft", () => "/protocol/draft/file"],
  ["whom a draft of the protocol touches", () => "/protocol/impact"],
  ["versions of the protocol", () => "/protocol/history"],
  ["the calendar", () => "/calendar"],
  ["closing the clinic", () => "/calendar/close"],
  ["half a day", () => "/calendar/half-day"],
  ["the open weekdays", () => "/calendar/weekdays"],
  ["holidays of a country to choose", () => "/calendar/holidays"],
  ["holidays of a country", () => "/calendar/holidays?country=GB&region=ENG"],
  ["nothing to take away from the calendar", () => "/calendar/take-away"],
  ["taking a closure away", ({ closure }) => `/calendar/take-away?closure=${closure()}`],
  ["versions of the calendar", () => "/calendar/history"],
  ["the rooms", () => "/rooms"],
  ["a room to add", () => "/rooms/new"],
  ["a room to change", () => "/rooms/room-1"],
  ["taking a room away", () => "/rooms/room-2/take-away"],
  ["versions of the rooms", () => "/rooms/history"],
  ["the staff", () => "/staff"],
  ["closing an account", ({ person }) => `/staff/${person("corin")}/close`],
  ["what papers say of the clinic", () => "/clinic"],
  ["the clinic's telephone", () => "/clinic/telephone"],
  ["a new patient", () => "/patients/new"],
  ["a patient with two tubes", ({ patient }) => patient("Brackenfold")],
  ["a patient with three tubes, one after the other", ({ patient }) => patient("Larkspindle")],
  ["a patient who has died", ({ patient }) => patient("Hollowmere")],
  ["identity and contact of a patient", ({ patient }) => `${patient("Brackenfold")}/identity`],
  ["finding another record of a patient", ({ patient }) => `${patient("Brackenfold")}/join`],
  [
    "two records side by side",
    ({ patient }) => `${patient("Brackenfold")}/join/${patient("Mossgate").split("/").at(-1)}`,
  ],
  ["a tube past its latest date", ({ tube }) => tube("Brackenfold")],
  ["a tube with a planned exchange and its bore profile", ({ tube }) => tube("Mossgate")],
  ["the table-top list of a planned exchange", ({ tube }) => `${tube("Mossgate")}/table-top`],
  ["the output diary of a drain", ({ tube }) => `${tube("Fennimoor")}/diary-sheet?units=oz`],
  ["the output diary of a stent", ({ tube }) => `${tube("Tumbleweir")}/diary-sheet`],
  ["the card of a tube", ({ tube }) => `${tube("Mossgate")}/card`],
  ["the card of a tube that is out", ({ tube }) => `${tube("Pebblecroft")}/card`],
  ["a tube that is out", ({ tube }) => tube("Pebblecroft")],
  ["a tube with an unknown date", ({ tube }) => tube("Wrenhollow")],
  ["a stent without an outside part", ({ tube }) => tube("Tumbleweir")],
  ["a removal that is not confirmed", ({ tube }) => tube("Candlewhit")],
  ["a tube with output", ({ tube }) => tube("Fennimoor")],
  ["the output of a drain", ({ tube }) => `${tube("Fennimoor")}/output`],
  ["the output of a stent", ({ tube }) => `${tube("Tumbleweir")}/output`],
  ["the tubes that wait for a physician", () => "/reviews"],
  ["the review of a drain", ({ tube }) => `${tube("Fennimoor")}/review`],
  ["the review of a decision that was made", ({ tube }) => `${tube("Wickerley-Foss")}/review`],
  ["the review of a stent", ({ tube }) => `${tube("Tumbleweir")}/review`],
  ["logging an emptying", ({ tube }) => `${tube("Fennimoor")}/record/reading`],
  ["logging a diary", ({ tube }) => `${tube("Fennimoor")}/record/diary`],
  [
    "correcting a reading",
    ({ tube, reading }) => `${tube("Fennimoor")}/output/${reading("Fennimoor")}/correct`,
  ],
  ["voiding a reading", ({ tube, reading }) => `${tube("Fennimoor")}/output/${reading("Fennimoor")}/void`],
  ["confirming dates", ({ tube }) => `${tube("Brackenfold")}/record/dates-confirmed`],
  [
    "correcting an entry",
    ({ patient, entry }) => `${patient("Brackenfold")}/correct/${entry("Brackenfold").event}`,
  ],
  [
    "voiding an entry",
    ({ patient, entry }) => `${patient("Brackenfold")}/void/${entry("Brackenfold").event}`,
  ],
  ["three slots for two tubes", ({ patient }) => `${patient("Brackenfold")}/visit`],
  ["three slots for a tube that is out", ({ patient }) => `${patient("Pebblecroft")}/visit`],
  ["a visit", ({ visit }) => visit("Fennelworth")],
  ["a visit elsewhere", ({ visit }) => visit("Tarnwhistle")],
  ["the letter about a visit", ({ visit }) => `${visit("Fennelworth")}/letter`],
  ["the letter about a visit elsewhere", ({ visit }) => `${visit("Tarnwhistle")}/letter`],
  ["moving a visit", ({ visit }) => `${visit("Fennelworth")}/move`],
  ["what is settled before a visit", ({ visit }) => `${visit("Fennelworth")}/settle`],
  ["cancelling a visit", ({ visit }) => `${visit("Fennelworth")}/cancel`],
  ["a red flag to raise", ({ patient }) => `${patient("Ravelstook")}/flags/new`],
  ["a red flag that somebody has", ({ flag }) => flag("Ravelstook")],
  ["a red flag that goes on to somebody else", ({ flag }) => `${flag("Ravelstook")}?again=yes`],
  ["a tube that is out to record", ({ patient }) => `${patient("Brackenfold")}/tube-out`],
  ["undoing an act", ({ patient, entry }) => `${patient("Brackenfold")}/undo/${entry("Brackenfold").act}`],
  ...patientForms,
  ...tubeForms,
];

/**
 * Pages that are not looked at here: whoever signs in has no page yet (accessibility.spec.ts), a list has to be brought first
 * (import.spec.ts, as strictly), and the bench has no reader.
 */
const elsewhere = /^\/(sign-in|import\/\[id\]|import\/undo\/\[act\]|bench\/.*)$/;

test("every page of the program is looked at here", ({ clinic }) => {
  const pages = readdirSync(join(root, "app"), { recursive: true, encoding: "utf8" })
    .filter((file) => basename(file) === "page.tsx")
    .map((file) => `/${dirname(file).replace(/^\.$/, "")}`)
    .filter((path) => !elsewhere.test(path));
  const seen = screens.map(([, address]) => withDemoAddresses(clinic.database, address).split("?")[0] ?? "");
  const shows = (path: string) => new RegExp(`^${path.replaceAll(/\[\w+\]/g, "[^/]+")}$`);
  expect(pages.length).toBeGreaterThan(0);
  expect(pages.filter((path) => !seen.some((address) => shows(path).test(address)))).toEqual([]);
});

for (const [name, address] of screens) {
  test(`${name}: no violation on either ground, targets to hit, nothing sideways at 320 px, plain on paper`, async ({
    page,
    clinic,
  }) => {
    const answer = await page.goto(withDemoAddresses(clinic.database, address));
    expect(answer?.status()).toBe(200);
    await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    await page.locator("details").evaluateAll((all) => {
      for (const one of all) one.setAttribute("open", "");
    });
    await expectAccessible(page);
    await expectContrastInTheDark(page);
    await expectReflow(page);
    await expectPlainPrint(page);
  });
}

/** Drawn parts that a reader whose system sets the colors would not see: without a line, or in the color of the ground. */
const lost = (selector: string): string[] => {
  const ground = getComputedStyle(document.documentElement).backgroundColor;
  return [...document.querySelectorAll(selector)]
    .filter((part) => {
      const { stroke, fill, strokeWidth } = getComputedStyle(part);
      const hasLine = stroke !== "none" && stroke !== ground && Number.parseFloat(strokeWidth) > 0;
      const isFilled = fill !== "none" && fill !== ground;
      return !hasLine && !isFilled;
    })
    .map((part) => part.outerHTML);
};

test.describe("in forced colors", () => {
  test.beforeEach(({ page }) => page.emulateMedia({ forcedColors: "active" }));

  test("every line, window and sign of the dwell strip can be seen", async ({ page }) => {
    await page.goto("/exchanges");
    await expect(page.locator("tbody svg [data-late]")).not.toHaveCount(0);
    expect(await page.evaluate(lost, "main svg :is(line, rect, circle, path)")).toEqual([]);
  });

  test("every wall, wire and rule of the bore profile can be seen", async ({ page, clinic }) => {
    await page.goto(withDemoAddresses(clinic.database, ({ tube }) => tube("Mossgate")));
    await expect(page.locator("figure svg polygon")).not.toHaveCount(0);
    // The gaps of a broken edge are drawn over it in the color of the ground.
    const drawn = "figure svg :is(line, rect, circle, path, polygon, polyline):not([class*=byLabel])";
    expect(await page.evaluate(lost, drawn)).toEqual([]);
  });

  test("every bar, gap, line and band of the output chart can be seen", async ({ page, clinic }) => {
    await page.goto(withDemoAddresses(clinic.database, ({ tube }) => `${tube("Fennimoor")}/output`));
    await expect(page.locator("figure svg rect")).not.toHaveCount(0);
    expect(await page.evaluate(lost, "figure svg :is(line, rect, path, polygon)")).toEqual([]);
  });
});
