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
  await record(page, `${patient}/record/reconciled`, {
    act: "Reconcile",
    chosen: { "What does not agree": "Sides" },
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
  const stays = await newTube({ patient: { familyName: "Twofold", number: "880011" } });
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
  await openOfPatient(page).getByRole("link", { name: "Join another record of this person" }).click();
  const number = page.getByLabel("Number of the other record, whole");
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
