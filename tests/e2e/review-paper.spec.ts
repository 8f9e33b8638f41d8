import type { Page } from "@playwright/test";
import Sqlite from "better-sqlite3";
import { withDemoAddresses } from "#tests/e2e/support/demo-addresses.ts";
import { type Sender, send } from "#tests/e2e/support/enter-tube.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { formats, sheetsOf } from "#tests/e2e/support/sheets.ts";

test.use({ role: "physician" });

/** The tubes of the demo with the longest logs and the longest stories. */
function fullest(database: string): readonly string[] {
  const sqlite = new Sqlite(database, { readonly: true });
  const ids = sqlite
    .prepare<[], string>(
      `select id from tubes where status = 'in' order by
        2 * (select count(*) from readings where tube_id = tubes.id)
        + (select count(*) from event_tubes where tube_id = tubes.id) desc limit 6`,
    )
    .pluck()
    .all();
  sqlite.close();
  return ids.map((id) => `/tubes/${id}/review`);
}

const about = (address: string): string => address.split("/")[2] ?? "";

/** A collection of which everything that is asked is known, at some length, and seven days of its output with all that can be remarked. */
async function tellAll(sender: Sender, { patient, tube }: { patient: string; tube: string }): Promise<void> {
  const of = { lastSeen: 0, patientId: about(patient), tubeId: about(tube) };
  const tell = (procedure: string, texts: Record<string, string>) =>
    send(sender, `record.${procedure}`, { ...of, texts });
  const ofPatient = (procedure: string, texts: Record<string, string>) =>
    send(sender, `record.${procedure}`, { lastSeen: 0, patientId: of.patientId, texts });
  await ofPatient("clinicalStateNoted", {
    temperature: "36.9",
    chills: "no",
    feels: "well",
    pain: "2",
    coughOrBreathlessness: "no",
    imaging: "smaller",
    imagingOn: "-2",
    imagingWords: "2 cm by 1 cm left at the lower pole of the spleen, CT",
    antibioticsUntil: "+4",
    whiteCells: "9.1",
    crp: "23",
    culture: "two sorts of bowel bacteria, both sensitive to what is given",
    toldBy: "the home nurse",
  });
  await tell("flushed", { went: "easily", given: "10", cameBack: "yes" });
  await tell("leaking", { soaking: "no", note: "damp dressing in the mornings, dry by noon" });
  await tell("checked", {
    study: "sinogram",
    finding: "Small cavity, no way into the bowel or the pancreatic duct, the catheter lies in its middle.",
  });
  await tell("factsNoted", { externalLength: "14" });
  await tell("fluidTested", {
    amylase: "4200",
    amylaseLimit: "110",
    bilirubin: "85",
    bilirubinSerum: "25",
    creatinine: "210",
    creatinineSerum: "88",
    triglyceride: "1.4",
  });
  await tell("planRecorded", {
    plan: "review +9 Dr Example because the tail was resected: leave it until the amylase has come down",
  });
  for (let day = 7; day > 0; day -= 1)
    await send(sender, "reading.recorded", {
      ...of,
      texts: {
        drained: String(20 + day),
        flushGiven: "10",
        from: `-${day} 00:00`,
        to: day === 1 ? "today 00:00" : `-${day - 1} 00:00`,
        characters: "purulent, debris",
        leak: "damp",
        measuredBy: "estimate",
        reportedBy: "the home nurse",
      },
    });
}

const room = (page: Page) => page.getByText("Physician, day and time");

test("the review of a tube of which all is known prints on one sheet, with what a decision rests on and room for it", async ({
  page,
  clinic,
  newTube,
}) => {
  const entered = await newTube({
    tube: {
      kind: "pancreatic drain",
      side: "not sided",
      size: "12 f",
      cavity: "lesser sac, behind the stomach",
      indication: "collection after resection of the tail of the pancreas",
      retention: "locking loop",
      flushOrder: "10 mL x 3 a day",
      when: "-20",
    },
  });
  await tellAll({ request: page.request, origin: clinic.origin }, entered);
  await page.goto(`${entered.tube}/review`);
  await expect(room(page)).toBeHidden();
  for (const format of formats) expect(await sheetsOf(page, format)).toBe(1);

  await test.step("what stands on it", async () => {
    await page.emulateMedia({ media: "print" });
    await expect(room(page)).toBeVisible();
    for (const words of [
      "Quimbleton, Ada",
      "4 May 1959",
      /^As of .*, printed by Petra Physick$/,
      /^EXAMPLE: /,
      "Meeting a number means only that: check patency, patient and imaging.",
      "purulent, debris",
    ])
      await expect(page.getByText(words).filter({ visible: true }).first()).toBeVisible();
    for (const word of ["Operator's plan", "Set", "Clinical state", "Cause", "Tract", "Last study"])
      await expect(page.locator("dt").getByText(word, { exact: true })).toBeVisible();
    await expect(page.getByRole("table", { name: /^The last 7 days/ }).locator("tbody tr")).toHaveCount(7);
    await expect(page.locator("figure svg").first()).toBeVisible();
    await expect(page.getByRole("link", { name: "Decide in review" })).toBeHidden();
    await expect(page.getByRole("heading", { name: "Also open" })).toBeHidden();
    await page.emulateMedia({ media: null });
  });

  await test.step("a decision that stands takes the room, until a reading that it rested on is corrected", async () => {
    const of = {
      lastSeen: Number.MAX_SAFE_INTEGER,
      patientId: about(entered.patient),
      tubeId: about(entered.tube),
    };
    const sender = { request: page.request, origin: clinic.origin };
    await send(sender, "record.reviewDecided", {
      ...of,
      texts: { what: "imaging", by: "+2", decidedBy: "Petra Physick", words: "Film first, then the clamp." },
    });
    await page.goto(`${entered.tube}/review`);
    await page.emulateMedia({ media: "print" });
    await expect(page.getByText(/Reviewed: by Petra Physick, imaging by .*Film first/)).toBeVisible();
    await expect(page.getByText("Not done yet: imaging.")).toBeVisible();
    await expect(room(page)).toHaveCount(0);
    // Ended before the decision: "now" would be a minute later where the clock's minute turns between the two.
    const to = { drained: "5", flushGiven: "10", from: "today 00:00", to: "today 00:01" };
    await send(sender, "reading.recorded", { ...of, texts: to });
    await page.goto(`${entered.tube}/review`);
    await expect(page.getByText("1 reading differs; they stand side by side on the screen.")).toBeVisible();
    await expect(room(page)).toBeVisible();
    await page.emulateMedia({ media: null });
    for (const format of formats) expect(await sheetsOf(page, format)).toBe(1);
  });
});

test("the fullest tubes of the demo print on one sheet each", async ({ page, clinic }) => {
  const named = withDemoAddresses(clinic.database, ({ tube }) =>
    ["Kettlebourne-Sprig", "Wickerley-Foss", "Rushwater-Tarn", "Airywhistle"].map(
      (name) => `${tube(name)}/review`,
    ),
  );
  for (const address of new Set([...named, ...fullest(clinic.database)])) {
    await page.goto(address);
    for (const format of formats) expect(await sheetsOf(page, format), address).toBe(1);
  }
});
