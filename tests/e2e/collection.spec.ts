import type { Page } from "@playwright/test";
import { run } from "#server/commands/run.mjs";
import type { ClinicServer } from "#tests/e2e/support/clinic-server.ts";
import { test } from "#tests/e2e/support/own-clinic.ts";
import { record } from "#tests/e2e/support/record.ts";
import { expect } from "#tests/e2e/support/test.ts";
import { open, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const drain = { kind: "abscess drain", size: "10 f", when: "-20", takes: "", cavity: "left subphrenic" };

const daysOn = ({ database }: ClinicServer, days: number) =>
  run(process.execPath, ["node_modules/tsx/dist/cli.mjs", "server/commands/demo-clock.ts", `+${days}d`], {
    env: { DATABASE_FILE: database },
  });

/** Whole days of a diary, each with what was emptied on it and no flush. */
async function logDiary(page: Page, tube: string, days: readonly (readonly [day: string, ml: string])[]) {
  await open(page, `${tube}/record/diary`);
  await type(page, { "Flush given each time, mL": "none" });
  for (const [index, [day, ml]] of days.entries()) {
    await page.getByLabel(`Row ${index + 1}: emptied at`).fill(day);
    await page.getByLabel(`Row ${index + 1}: drained, mL`).fill(ml);
  }
  await page.getByRole("button", { name: "Log the diary" }).click();
  await expect(page.getByText(`The diary is logged: ${days.length} emptyings.`)).toBeVisible();
}

const verdict = async (page: Page, tube: string) => {
  await page.goto(`${tube}/output`);
  return page.getByRole("main");
};

test("an abscess drain reads not met a day after its upsize, then met, then cannot tell (hard cases 3, 17, 37)", async ({
  page,
  pageOf,
  clinic,
  newTube,
}) => {
  test.slow();
  const { tube, patient } = await newTube({ tube: drain });
  const caller = await pageOf("caller");
  const physician = await pageOf("physician");

  await test.step("upsized two days ago; a caller enters four days of a diary", async () => {
    await record(page, `${tube}/record/upsized`, {
      act: "Record an upsize",
      typed: { "New size": "12 f", "Upsized on": "-2 10:00" },
    });
    await logDiary(caller, tube, [
      ["-4", "9"],
      ["-3", "8"],
      ["-2", "8"],
      ["-1", "7"],
    ]);
    await expect(await verdict(physician, tube)).toContainText(
      /Numeric part not met: upsized on .*, one complete day since/i,
    );
  });

  await test.step("two days on, with two more low days and the patient well, the numeric part is met", async () => {
    await daysOn(clinic, 2);
    await logDiary(caller, tube, [
      ["-2", "6"],
      ["-1", "5"],
    ]);
    await expect(await verdict(physician, tube)).toContainText(/Cannot tell: .*temperature/i);
    await record(page, `${patient}/record/clinical-state-noted`, {
      act: "Note the clinical state",
      chosen: { "Shaking chills": "No" },
      typed: { "Temperature, °C": "36.8" },
    });
    const main = await verdict(physician, tube);
    await expect(main).toContainText("Numeric part met");
    await expect(main).toContainText("check patency, patient and imaging");
    await physician.goto("/reviews");
    const met = physician.getByRole("table", { name: /^Numeric part met/ });
    await expect(met.getByRole("row").filter({ hasText: "Quimbleton" })).toHaveCount(1);
  });

  await test.step("a week of silence later it cannot be told", async () => {
    await daysOn(clinic, 7);
    await expect(await verdict(physician, tube)).toContainText(/Cannot tell: /);
    await physician.goto("/reviews");
    const met = physician.getByRole("table", { name: /^Numeric part met/ });
    await expect(met.getByRole("row").filter({ hasText: "Quimbleton" })).toHaveCount(0);
  });
});
