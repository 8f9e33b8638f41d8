import type { Locator, Page } from "@playwright/test";
import { expectAccessible, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";

test.use({ role: "nurse" });

/** The line of a patient, on whichever page of the list it stands. */
async function lineOf(page: Page, name: string): Promise<Locator> {
  await page.goto("/calls");
  const line = page.getByRole("row", { name: new RegExp(name) });
  const onward = page.getByRole("link", { name: "The rows after these" });
  while ((await line.count()) === 0 && (await onward.count()) > 0) {
    await onward.click();
    await page.waitForURL(/page=/);
  }
  await expect(line).toHaveCount(1);
  return line;
}

test("a placement of yesterday stands among the first hours, with who has the call, and leads to it by one key", async ({
  page,
  newTube,
  request,
  clinic,
}) => {
  const { patient } = await newTube({
    patient: { familyName: "Rung-First" },
    tube: { when: "-1" },
  });
  const line = await lineOf(page, "Rung-First");
  await expect(line).toContainText("first hours");
  await expect(line).toContainText("not yet");
  await expectAccessible(page);
  await expectReflow(page);
  // No act: a hold is nothing of the record.
  const { origin } = clinic;
  const taken = await request.post(`${origin}/api/trpc/calls.taken`, {
    data: { patientId: patient.split("/").at(-1) },
    headers: { origin },
  });
  expect(taken.status()).toBe(200);
  const held = await lineOf(page, "Rung-First");
  await expect(held.getByRole("cell").last()).toContainText("Tansy Nurseworth");
  const link = held.getByRole("link");
  await expect(link).toHaveAttribute("href", `${patient}/call`);
  // Arrows go from line to line, by the order of the list.
  const first = page.getByRole("row").getByRole("link").first();
  await expect(async () => {
    await page.keyboard.press("ArrowDown");
    await expect(first).toBeFocused({ timeout: 200 });
  }).toPass();
  await link.focus();
  await page.keyboard.press("Enter");
  await page.waitForURL(`**${patient}/call`);
});

test("of somebody who lives by another clock the list and the call say what it shows", async ({
  page,
  newTube,
}) => {
  const { patient } = await newTube({ patient: { familyName: "Rung-Far" }, tube: { when: "-1" } });
  await page.goto(`${patient}/identity`);
  await page.getByText("More that is known").click();
  const field = page.getByRole("textbox", { name: "Time zone of the patient" });
  await field.fill("the seaside");
  await field.press("Enter");
  const beside = page.locator("#field-livesIn-beside");
  await expect(beside).toHaveText('"the seaside" is not a time zone. Type one like Europe/London.');
  await field.fill("kiritimati");
  await expect(beside).toHaveText(/Pacific\/Kiritimati/);
  await field.press("Enter");
  await expect(page.getByText("The record is corrected; what stood is kept.")).toBeVisible();
  const shown = /\d\d:\d\d there now: the patient's clock is 1[34] h ahead, Pacific\/Kiritimati/;
  await expect(await lineOf(page, "Rung-Far")).toContainText(shown);
  await page.goto(`${patient}/call`);
  await expect(page.getByText(shown)).toBeVisible();
  await expectAccessible(page);
  await expectReflow(page);
});

test("the call list prints a sheet a patient, and the closing list says what is still open", async ({
  page,
  newTube,
}) => {
  await newTube({ patient: { familyName: "Rung-Onpaper" }, tube: { when: "-1" } });
  await page.goto("/calls");
  await page.getByRole("link", { name: "Call list to print" }).click();
  await page.waitForURL(/\/calls\/paper/);
  const sheet = page.getByRole("main").locator("section", { hasText: "Rung-Onpaper" });
  await expect(sheet).toContainText("Short of breath, or pain in the chest?");
  await expect(sheet).toContainText("EXAMPLE");
  await expect(sheet).toContainText("Volume");
  await expect(sheet).toContainText("Not for emergencies");
  await page.goto("/calls/closing");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(
    "What is still open, and who has it overnight?",
  );
  await expectAccessible(page);
});
