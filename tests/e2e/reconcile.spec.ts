import { openOfPatient, record, undoNewest } from "#tests/e2e/support/record.ts";
import { expect, test } from "#tests/e2e/support/test.ts";
import { storyRows } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

test("hard case 23: swapped sides are asked, set in one act, and set back by its undo", async ({
  page,
  newTube,
}) => {
  const { patient } = await newTube();
  await record(page, `${patient}/record/placed`, {
    act: "Record a tube",
    typed: { Kind: "pcn r", Size: "10 f", "Placed, or last exchanged, on": "-20" },
  });
  await record(page, `${patient}/record/reconcile-asked`, {
    act: "Ask for two records to be reconciled",
    chosen: { "What does not agree": "Sides" },
    typed: { "What they say": "the report says right, the record left" },
  });
  await page.goto(patient);
  await openOfPatient(page).getByRole("link", { name: "Reconcile" }).click();
  await expect(page.getByLabel("What does not agree")).toHaveValue("sides");
  await record(page, `${patient}/record/reconciled`, {
    act: "Reconcile",
    typed: {
      "Found how": "films looked at",
      "Side of tube 1: Left nephrostomy": "r",
      "Side of tube 2: Right nephrostomy": "l",
    },
  });
  await page.goto(patient);
  await expect(page.getByRole("rowheader", { name: /Left nephrostomy.*10 F/s })).toBeVisible();
  await expect(openOfPatient(page)).toHaveCount(0);
  await undoNewest(page, patient);
  await page.goto(patient);
  await expect(page.getByRole("rowheader", { name: /Right nephrostomy.*10 F/s })).toBeVisible();
  await expect(openOfPatient(page)).toContainText("the report says right, the record left");
});

test("hard case 23: two records of one patient are looked at side by side, joined, and parted by undo", async ({
  page,
  newTube,
}) => {
  const stays = await newTube({
    patient: { familyName: "Twofold", number: "880011", birthOn: "7 may 1958" },
  });
  const other = await newTube({
    patient: { familyName: "Twofolde", number: "880012", birthOn: "5 may 1959" },
    tube: { kind: "pcn r" },
  });
  await record(page, `${stays.patient}/record/reconcile-asked`, {
    act: "Ask for two records to be reconciled",
    chosen: { "What does not agree": "Two records of one patient" },
    typed: { "What they say": "one address" },
  });
  await page.goto(stays.patient);
  await expect(openOfPatient(page)).toContainText("No other record here has the same name");
  await openOfPatient(page).getByRole("link", { name: "Find the other record by its number" }).click();
  const number = page.getByLabel("Number of the other record, whole");
  await expect(async () => {
    await page.getByRole("button", { name: "Find it" }).click();
    await expect(number).toHaveAccessibleDescription(
      /^Type the whole number that stands on the other record\./,
      {
        timeout: 2_000,
      },
    );
  }).toPass();
  await expect(number).toBeFocused();
  await expect(async () => {
    await number.fill("880012");
    await number.press("Enter");
    await expect(page.getByRole("link", { name: "Twofolde, Ada" })).toBeVisible({ timeout: 2_000 });
  }).toPass();
  await page.getByRole("link", { name: "Twofolde, Ada" }).click();
  await expect(page.getByText("The birth dates differ.")).toBeVisible();
  const both = new URL(page.url()).pathname;
  await record(page, both, { act: "Join the two records", typed: { "Found how": "asked at the desk" } });

  await page.goto(stays.patient);
  await expect(page.getByRole("rowheader", { name: /nephrostomy/ })).toHaveCount(2);
  await expect(openOfPatient(page)).toHaveCount(0);
  await expect(storyRows(page, /Joined with another record/)).toHaveCount(1);
  await page.getByRole("link", { name: "Twofolde, Ada, this hospital 880012" }).click();
  await expect(page.getByText("This record was joined with another of the same person.")).toBeVisible();
  await page.goto(`${other.patient}/record/placed`);
  await expect(page.getByRole("link", { name: "Twofold, Ada, this hospital 880011" })).toBeVisible();
  await expect(page.getByRole("button", { name: "Record a tube" })).toHaveCount(0);

  await undoNewest(page, stays.patient);
  await page.goto(other.patient);
  await expect(page.getByRole("rowheader", { name: /Right nephrostomy/ })).toBeVisible();
});

test("two records of one patient: the step and its form name the other record, and lead to both side by side", async ({
  page,
  newTube,
}) => {
  const stays = await newTube({ patient: { familyName: "Pairwise", number: "880021" } });
  const other = await newTube({
    patient: { familyName: "Pairwyse", number: "880022", birthOn: "5 may 1959" },
  });
  await record(page, `${stays.patient}/record/reconcile-asked`, {
    act: "Ask for two records to be reconciled",
    chosen: { "What does not agree": "Two records of one patient" },
    typed: { "What they say": "at the desk she showed 880022 too" },
  });
  await page.goto(stays.patient);
  const step = openOfPatient(page);
  await expect(step).toContainText("Pairwyse, Ada this hospital 880022, born 5 May 1959");
  await expect(step.getByRole("link", { name: "Pairwyse, Ada" })).toHaveAttribute(
    "href",
    `${stays.patient}/join/${other.patient.split("/").at(-1)}`,
  );

  await step.getByRole("link", { name: "Reconcile" }).click();
  const about = page.getByLabel("What does not agree");
  await expect(about).toHaveValue("two records of one patient");
  await expect(page.getByLabel(/^Side of tube/)).toHaveCount(0);
  await about.selectOption({ label: "Sides" });
  const side = page.getByLabel("Side of tube 1: Left nephrostomy");
  await side.fill("r");
  await about.selectOption({ label: "Two records of one patient" });
  await expect(side).toHaveValue("r");
  await side.fill("");
  await expect(side).toHaveCount(0);

  await page.getByRole("link", { name: "Pairwyse, Ada" }).click();
  await expect(page.getByRole("button", { name: "Join the two records" })).toBeVisible();
});
