import type { Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { record } from "#tests/e2e/support/record.ts";
import { open, save, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const patient = { familyName: "Aridmoor", givenName: "Fidelity", number: "7100501" };

/** Nothing in the bag over seven hours, told on the telephone. */
async function logNothing(caller: Page, tube: string): Promise<void> {
  await open(caller, `${tube}/record/reading`);
  await type(caller, {
    "Drained, mL": "0",
    "Flush given, mL": "none",
    "Emptied at": "yesterday 15:00",
    Since: "yesterday 08:00",
  });
  await save(caller, "Log the emptying");
  await expect(caller.getByText("The emptying is logged.")).toBeVisible();
}

const alarmOnToday = (page: Page) => page.getByRole("row").filter({ hasText: "Aridmoor" });

test("case 5: a nephrostomy dry for seven hours raises one alarm, which a physician closes; never a review", async ({
  page,
  pageOf,
  newTube,
}) => {
  const { tube } = await newTube({ patient });
  const caller = await pageOf("caller");
  await logNothing(caller, tube);

  await test.step("it stands on the nurse's Today, in the first table, with why", async () => {
    await page.goto("/today/out");
    const row = page.getByRole("table").first().getByRole("row").filter({ hasText: "Aridmoor" });
    await expect(row).toHaveCount(1);
    await expect(row).toContainText("Alarm: look at it");
    await expect(row).toContainText("Nothing drained for 7 h (row: 6 h; source CP).");
    await expect(row).toContainText("Close the alarm");
  });

  await test.step("the caller sees why and what holds until somebody is reached, and cannot close it", async () => {
    await caller.goto(tube);
    const reasons = caller.getByRole("list", { name: "Reasons of the alarm" });
    await expect(reasons).toContainText("Until reached: do not force the flush.");
    await expect(caller.getByRole("link", { name: "Close the alarm" })).toHaveCount(0);
    await expect(caller.getByRole("heading", { name: "Review" })).toHaveCount(0);
  });

  await test.step("a physician closes it with what was done; nothing is left of it, and no review is open", async () => {
    const physician = await pageOf("physician");
    await record(physician, `${tube}/record/alarm-closed`, {
      act: "Close the alarm",
      chosen: { "What was done": "Flushed and it ran" },
      typed: { "Done or decided by": "Petra Physick" },
    });
    await physician.goto(tube);
    await expect(physician.locator("#story")).toContainText(
      "Alarm closed: flushed and it ran, by Petra Physick.",
    );
    await expect(physician.getByText("Alarm: look at it")).toHaveCount(0);
    await expect(physician.getByText("Review", { exact: true })).toHaveCount(0);
    await page.goto("/today/out");
    await expect(alarmOnToday(page)).toHaveCount(0);
  });
});

test("a usual level is accepted by a physician alone, from the alarm that asks for it", async ({
  page,
  pageOf,
  newTube,
}) => {
  const { tube } = await newTube({ patient: { ...patient, number: "7100502", familyName: "Scantlow" } });
  await record(page, `${tube}/record/reading`, {
    act: "Log the emptying",
    typed: {
      "Drained, mL": "60",
      "Flush given, mL": "none",
      "Emptied at": "today 00:00",
      Since: "yesterday 00:00",
    },
  });
  await page.goto(tube);
  await expect(page.getByRole("list", { name: "Reasons of the alarm" })).toContainText(
    "60 mL/24 h (row: under 100",
  );
  await expect(page.getByRole("link", { name: "Accept as usual level" })).toHaveCount(0);
  const physician = await pageOf("physician");
  await record(physician, `${tube}/record/usual-level-accepted`, {
    act: "Accept as usual level",
    typed: { "Usual for this tube, mL in 24 h": "60", Until: "+30", "Accepted by": "Petra Physick" },
  });
  await page.goto(tube);
  await expect(page.getByText("Alarm: look at it")).toHaveCount(0);
});

test("on a telephone the alarm and its form scroll no sideways", async ({ pageOf, newTube }) => {
  const { tube } = await newTube({ patient: { ...patient, number: "7100503", familyName: "Narrowmere" } });
  const physician = await pageOf("physician");
  await physician.setViewportSize({ width: 390, height: 844 });
  await logNothing(physician, tube);
  for (const address of [tube, `${tube}/record/alarm-closed`, `${tube}/record/usual-level-accepted`]) {
    await physician.goto(address);
    await expect(physician.getByRole("heading", { level: 1 })).toBeVisible();
    const width = await physician.evaluate(() => document.documentElement.scrollWidth);
    expect(width, address).toBe(390);
  }
});
