import { readFileSync } from "node:fs";
import {
  expectAccessible,
  expectContrastInTheDark,
  expectPlainPrint,
  expectReflow,
} from "#tests/e2e/support/accessibility.ts";
import { record, undoNewest } from "#tests/e2e/support/record.ts";
import { expect, expectOnly, test } from "#tests/e2e/support/test.ts";
import { findByKey } from "#tests/e2e/support/typing.ts";

/** A small list with what makes a list untidy: a title, an order of dates to ask, a row to mend, one patient in two rows. */
const list = (run: string): string =>
  [
    "Our drains;;;;;;;",
    "Name;DOB;MRN;Tube;Fr;Date placed;Phone;Placed at",
    `Oakwhistle, Marigold;3/4/51;${run}1;PCN L pigtail;8;3/4/26;555 0117;Saltmarsh Infirmary`,
    `Oakwhistle, Marigold;;${run}1;PCN R;8;5/6/26;;`,
    `Thornwick, Barnaby;?;${run}2;perc chole;;n/k;;`,
    `Quenchley, Ivo;9/9/1970;${run}3;widget;8/10F;2/3/26;+44 555 0118;`,
    "Total;;;4;;;;",
  ].join("\r\n");

test.use({ role: "nurse" });

test("a nurse brings in a list: asked once, shown row by row, brought in, taken back as one act", async ({
  page,
}) => {
  await page.goto("/staff");
  await page.getByRole("link", { name: "Bring in a list" }).click();
  await page.getByLabel("File", { exact: true }).setInputFiles({
    name: "our drains.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(list("47"), "latin1"),
  });
  await page.getByRole("button", { name: "Read the list" }).click();

  await expect(page.getByRole("heading", { level: 1 })).toHaveText("How will these rows stand?");
  await expect(page.getByText("can be read two ways. Say which stands first")).toBeVisible();
  await expectAccessible(page);
  await page.getByLabel("First in a date").selectOption("day first");
  await page.getByRole("button", { name: "Read the rows so" }).click();

  await expect(
    page.getByText(
      "Of 5 rows 3 come in, the tubes of 2 patients. 1 is set aside until mended. Left out, not a row of a tube: row 7.",
    ),
  ).toBeVisible();
  const left = page.getByRole("row", { name: /Left nephrostomy, 8 F, locking loop/ });
  await expect(left).toContainText("Fri 3 Apr 2026");
  await expect(left).toContainText("telephone 555 0117");
  await expect(left).toContainText("from Saltmarsh Infirmary");
  await expect(page.getByRole("row", { name: /Cholecystostomy, size unknown/ })).toContainText(
    "Assess the date",
  );
  const aside = page.getByRole("row", { name: /Quenchley/ });
  await expect(aside).toContainText('Tube: "widget" does not say what kind of tube it is.');
  await expect(aside).toContainText('Fr: "8/10F" names two sizes');
  await expectAccessible(page);
  await expectContrastInTheDark(page);
  await page.emulateMedia({ colorScheme: "light" });
  await expectReflow(page);
  await expectPlainPrint(page);
  await page.emulateMedia({ media: "screen" });
  await page.setViewportSize({ width: 1280, height: 900 });

  const saved = page.waitForEvent("download");
  await page.getByRole("link", { name: "Save the rows set aside" }).click();
  const rows = readFileSync(await (await saved).path(), "utf8");
  expect(rows).toMatch(
    /^\u{feff}Name,DOB,MRN,Tube,Fr,Date placed,Phone,Placed at,row in the list,what to mend\r\n"?Quenchley/u,
  );
  expect(rows).toContain(`"'+44 555 0118"`);

  await page.getByRole("button", { name: "Bring in 3 tubes" }).click();
  await expect(page.getByText("3 tubes of 2 patients brought in.")).toBeVisible();
  await expect(page.getByText("3 were brought in before.")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("Undone: 3 tubes of 2 patients brought in.")).toBeVisible();
  await page.goto("/import");
  await expect(page.getByRole("row", { name: /our drains\.csv.*taken back/ })).toBeVisible();

  await page.getByLabel("File", { exact: true }).setInputFiles({
    name: "mended.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(rows.replace("widget", "PCN L").replace("8/10F", "8F")),
  });
  await page.getByRole("button", { name: "Read the list" }).click();
  await page.getByLabel("First in a date").selectOption("day first");
  await page.getByRole("button", { name: "Read the rows so" }).click();
  await expect(page.getByRole("row", { name: /^2 Quenchley/ })).toContainText("telephone +44 555 0118");
  await expect(page.getByLabel(/^What the column/)).toHaveCount(8);
});

test("before a list is taken back, the records whose later work rests on it are named", async ({ page }) => {
  await page.goto("/import");
  const rows = ["Name\tMRN\tTube\tDate placed", "Restwell, Odo\t48101\tPCN L\t2 mar 2026"].join("\n");
  await page.getByLabel("Or paste rows").fill(rows);
  await page.getByRole("button", { name: "Read the list" }).click();
  await page.getByRole("button", { name: "Bring in 1 tube" }).click();
  await expect(page.getByText("1 tube of 1 patient brought in.")).toBeVisible();
  await page.goto("/import");
  await page.getByRole("link", { name: "Take it back" }).first().click();
  await expect(page.getByText("No entry made later keeps it from being taken back.")).toBeVisible();
  const question = page.url();
  await expectAccessible(page);
  await expectReflow(page);

  await findByKey(page);
  await page.keyboard.type("48101");
  await page.keyboard.press("Enter");
  await page.waitForURL(/\/patients\//);
  const patient = page.url();
  await page
    .getByRole("link", { name: /Left nephrostomy/ })
    .first()
    .click();
  await page.waitForURL(/\/tubes\//);
  await record(page, `${page.url()}/record/exchanged`, {
    act: "Record an exchange",
    typed: { "Exchanged on": "-3" },
  });
  await page.goto(question);
  await expect(
    page.getByRole("heading", { name: "Later work rests on 1 record of this list" }),
  ).toBeVisible();
  await expect(page.getByRole("listitem").filter({ hasText: "Restwell" })).toContainText("exchanged");
  await expect(page.getByRole("button", { name: /Take back/ })).toHaveCount(0);
  await expectAccessible(page);

  await undoNewest(page, patient);
  await page.goto(question);
  await page.getByRole("button", { name: "Take back 1 tube" }).click();
  await expect(page.getByText("It is taken back.")).toBeVisible();
});

test("pasted rows are read, and columns matched once are remembered", async ({ page }) => {
  await page.goto("/import");
  const rows = ["Name\tMRN\tWhat is in", "Fernlow, Caspian\t48001\tspc"].join("\n");
  await page.getByLabel("Or paste rows").fill(rows);
  await page.getByRole("button", { name: "Read the list" }).click();
  await expect(page.getByText("No column says the kind of tube.")).toBeVisible();
  await page.getByLabel('What the column "What is in" says').selectOption({ label: "Kind" });
  await page.getByRole("button", { name: "Read the rows so" }).click();
  await page.getByRole("button", { name: "Bring in 1 tube" }).click();
  await expect(page.getByText("1 tube of 1 patient brought in.")).toBeVisible();

  await page.goto("/import");
  await page.getByLabel("Or paste rows").fill(rows.replace("48001", "48002").replace("Fernlow", "Mossbank"));
  await page.getByRole("button", { name: "Read the list" }).click();
  await expect(page.getByLabel('What the column "What is in" says')).toHaveValue("kind");
  await expect(page.getByRole("button", { name: "Bring in 1 tube" })).toBeVisible();
});

test("what is no list gets a sentence beside the field, and what was pasted stays", async ({
  page,
  complaints,
}) => {
  await page.goto("/import");
  await page.getByRole("button", { name: "Read the list" }).click();
  await expect(page.getByText("Choose a file, or paste the rows with their headings.").first()).toBeVisible();

  await page.getByLabel("File", { exact: true }).setInputFiles({
    name: "list.csv",
    mimeType: "text/csv",
    buffer: Buffer.from([0x50, 0x4b, 0x03, 0x04, 0, 0, 0, 0]),
  });
  await page.getByRole("button", { name: "Read the list" }).click();
  await expect(page.getByText("This is a workbook or a zip file, not a list as text.").first()).toBeVisible();

  await page.getByLabel("File", { exact: true }).setInputFiles({
    name: "list.csv",
    mimeType: "text/csv",
    buffer: Buffer.alloc(20 * 1024 * 1024, "x"),
  });
  await page.getByRole("button", { name: "Read the list" }).click();
  await expect(page.getByText("This file is larger than 8 MB.").first()).toBeVisible();

  await page.goto("/import");
  await page.getByLabel("Or paste rows").fill("just\nsome words");
  await page.getByRole("button", { name: "Read the list" }).click();
  await expect(page.getByText("No line of headings is found.").first()).toBeVisible();
  await expect(page.getByLabel("Or paste rows")).toHaveValue("just\nsome words");
  expectOnly(complaints, "422");
});

test.describe("a caller", () => {
  test.use({ role: "caller" });
  test("is not offered the page", async ({ page }) => {
    await page.goto("/import");
    await expect(page.getByRole("button", { name: "Read the list" })).toHaveCount(0);
  });
});
