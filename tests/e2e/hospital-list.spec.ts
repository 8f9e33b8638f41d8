import type { Page } from "@playwright/test";
import { expectAccessible, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { pressUndo } from "#tests/e2e/support/record.ts";
import { expectOnly } from "#tests/e2e/support/test.ts";
import { toMend } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const PATH = "/visits/hospital-list";

async function read(page: Page, rows: readonly string[]): Promise<void> {
  await page.goto(PATH);
  const button = page.getByRole("button", { name: "Read the list", exact: true });
  await expect(button).toBeEnabled();
  await page.getByLabel("Or paste rows").fill(rows.join("\n"));
  await button.click();
  await expect(page.getByText(/^\d+ rows? read\.$/)).toBeVisible();
}

const table = (page: Page, caption: string) => page.getByRole("table", { name: new RegExp(`^${caption}`) });
const row = (page: Page, caption: string, number: string) =>
  table(page, caption).getByRole("row").filter({ hasText: number });

const inDays = (days: number): string => {
  const on = new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);
  return on;
};

const HEAD = "Hospital no\tPatient\tDOB\tDate\tTime\tLocation\tExam";

test("a pasted list is matched, what is unclear is chosen, and one act brings it in and takes it back", async ({
  page,
  newTube,
}) => {
  const one = await newTube({ patient: { familyName: "Listhall", number: "880001" } });
  await newTube({ patient: { familyName: "Otherhall", number: "880002", birthOn: "5 may 1949" } });
  await read(page, [
    HEAD,
    `880001\t\t\t${inDays(20)}\t09:30\tFar Dale General\tPCN exchange`,
    `\tOtherhall, Ada\t5/5/1949\t${inDays(21)}\t10:00\tFar Dale General\tright nephrostomy exchange`,
    `880009\t\t\t${inDays(21)}\t10:00\tFar Dale General\texchange`,
    `880001\t\t\t${inDays(-3)}\t09:30\tFar Dale General\texchange`,
  ]);
  await expect(row(page, "Set aside", "880009")).toContainText(
    "Nobody here has the number 880009. Register the patient, or mend the number.",
  );
  await expect(table(page, "Set aside")).toContainText(
    "is past. Type a day and time that are still to come.",
  );
  await expect(row(page, "Will be booked elsewhere", "Listhall")).toContainText(/09:30, Far Dale General/);
  await expectAccessible(page);
  await expectReflow(page);

  const choice = page.getByLabel("Tube and act of row 3");
  await choice.selectOption({ index: 1 });
  await page.getByRole("button", { name: "Read it again with these answers" }).click();
  await expect(row(page, "Will be booked elsewhere", "Otherhall")).toHaveCount(1);
  await page.getByRole("button", { name: "Bring in 2 bookings" }).click();
  await expect(page.getByText("2 bookings entered, 2 set aside.")).toBeVisible();

  const other = await page.context().newPage();
  await other.goto(one.patient);
  await expect(other.getByText(/booked elsewhere/i).first()).toBeVisible();
  await other.close();

  await pressUndo(page, page.getByText(/^Undone/));
  await page.goto(one.patient);
  await expect(page.getByText(/Undone|undone/).first()).toBeVisible();
  await page.goto("/lists/unconfirmed");
  await expect(page.getByRole("row", { name: /Listhall|Otherhall/ })).toHaveCount(0);
});

test("a list with another heading, and dates that can be read two ways, is asked about once", async ({
  page,
  newTube,
}) => {
  await newTube({ patient: { familyName: "Askhall", number: "880011" } });
  const year = new Date(Date.now() + 200 * 86_400_000).getUTCFullYear() + 1;
  await read(page, ["Hospital no;When it is;Exam", `880011;11/12/${year};exchange`]);
  await expect(page.getByText("No column says the day of the booking.", { exact: false })).toBeVisible();
  await page.getByLabel("When it is").selectOption({ label: "Date" });
  await page.getByRole("button", { name: "Read it again with these answers" }).click();
  await expect(page.getByText(`Row 2 says "11/12/${year}"`, { exact: false })).toBeVisible();
  await page.getByLabel("First in a date").selectOption("day first");
  await page.getByRole("button", { name: "Read it again with these answers" }).click();
  await expect(row(page, "Will be booked elsewhere", "Askhall")).toContainText(
    `11 Dec ${year}, the hospital`,
  );
  await expectAccessible(page);
});

test("nothing pasted, and rows without headings, say what to mend; what was pasted stays", async ({
  page,
  complaints,
}) => {
  await page.goto(PATH);
  const button = page.getByRole("button", { name: "Read the list", exact: true });
  await expect(button).toBeEnabled();
  await button.click();
  await expect(toMend(page)).toContainText("Choose a file, or paste the rows");
  await page.getByLabel("Or paste rows").fill("one,two\nthree,four");
  await button.click();
  await expect(toMend(page)).toContainText(/heading/i);
  await expect(page.getByLabel("Or paste rows")).toHaveValue("one,two\nthree,four");
  expectOnly(complaints, "422");
});

test.describe("a caller", () => {
  test.use({ role: "caller" });

  test("is led away", async ({ page }) => {
    await page.goto(PATH);
    await expect(page.getByRole("button", { name: "Read the list" })).toHaveCount(0);
  });
});
