import type { Page } from "@playwright/test";
import { expectAccessible, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { open, toMend } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const diary = "/record/diary";
const readings = (page: Page) => page.getByRole("table", { name: /^Readings/ }).locator("tbody tr");
const cell = (page: Page, row: number, name: string) => page.getByLabel(`Row ${row}: ${name}`);
const beside = (page: Page, name: string) => page.locator(`#field-${name}-beside`);
const logIt = (page: Page) => page.getByRole("button", { name: "Log the diary" }).click();

/** Puts text on the clipboard's place in the page, as a spreadsheet does, and pastes it where the focus is. */
const paste = (page: Page, text: string): Promise<void> =>
  page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData("text", pasted);
    document.activeElement?.dispatchEvent(
      new ClipboardEvent("paste", { clipboardData: data, bubbles: true, cancelable: true }),
    );
  }, text);

test("six readings of a diary in at most 60 keys, logged as one act", async ({ page, newTube }) => {
  const { tube } = await newTube();
  await open(page, tube + diary);
  const rows = ["-4 8\t40", "14\t35", "22\t30", "730\t25", "14\t20", "22\t15"];
  const keys = `10\t${rows.join("\t\t\t")}\n`;
  expect(keys.length).toBeLessThanOrEqual(60);
  await page.evaluate(() => {
    document.body.dataset.keysHeard = "0";
    document.addEventListener(
      "keydown",
      () => {
        document.body.dataset.keysHeard = String(Number(document.body.dataset.keysHeard) + 1);
      },
      { capture: true },
    );
  });
  const names: Readonly<Record<string, string>> = { "\t": "Tab", "\n": "Enter", " ": "Space" };
  for (const key of keys.slice(0, -1)) await page.keyboard.press(names[key] ?? key);
  await expect(page.getByText("6 emptyings, net 105 mL in all.")).toBeVisible();
  await expect(beside(page, "when4")).toHaveText(/07:30$/);
  await page.keyboard.press("Enter");
  await expect(page.getByText("The diary is logged: 6 emptyings.")).toBeVisible();
  expect(await page.evaluate(() => Number(document.body.dataset.keysHeard))).toBe(keys.length);
  await page.goto(`${tube}/output`);
  await expect(readings(page)).toHaveCount(6);
});

test("a diary is taken back as one act", async ({ page, newTube }) => {
  const { tube } = await newTube();
  await open(page, tube + diary);
  await cell(page, 1, "emptied at").fill("-4 8:00");
  await cell(page, 1, "drained, mL").fill("40");
  await cell(page, 2, "emptied at").fill("14:00");
  await cell(page, 2, "drained, mL").fill("35");
  await logIt(page);
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await expect(page.getByText(/^Undone: The diary is logged/)).toBeVisible();
  await page.goto(`${tube}/output`);
  await expect(page.getByText("No reading yet.").first()).toBeVisible();
});

test("a block with headings and blanks, pasted into the first row, fills the rows and is shown before it is saved", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube();
  await open(page, tube + diary);
  await cell(page, 1, "emptied at").focus();
  const block = [
    "Time\tDrained (mL)\tFlush\tColor",
    "",
    "-4 8:00\t40\t10\tbilious",
    "14:00\t35\t10\t",
    "\t\t\t",
    "22:00\t30\t\t",
    "7:30\t25\t10\t",
    "14:00\t2 oz\t10\t",
    "22:00\t0\tnone\t",
    "8:00\t12\t10\tclear",
  ];
  await paste(page, block.join("\n"));
  await expect(cell(page, 7, "emptied at")).toHaveValue("8:00");
  await expect(beside(page, "drained5")).toHaveText("59.147 mL");
  await expect(beside(page, "characters1")).toHaveText("bilious");
  await expect(cell(page, 3, "flush given, mL")).toHaveValue("");
  await expect(page.getByText("7 emptyings; of 1 the net cannot be told.")).toBeVisible();
  await page.goto(`${tube}/output`);
  await expect(page.getByText("No reading yet.").first()).toBeVisible();
  await open(page, tube + diary);
  await expect(cell(page, 7, "drained, mL")).toHaveValue("12");
  await logIt(page);
  await expect(page.getByText("The diary is logged: 7 emptyings.")).toBeVisible();
});

test("a column of figures, one a day, and a message: put into the rows from the place for pasting", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube();
  await open(page, tube + diary);
  await cell(page, 1, "emptied at").fill("-5 8:00");
  await cell(page, 1, "drained, mL").focus();
  await paste(page, "Drained\n40\n35\n\n30");
  await expect(cell(page, 3, "emptied at")).toHaveValue("+1");
  await expect(beside(page, "when3")).toHaveText(/08:00$/);
  await page.getByText("Paste what was written down").click();
  await page.getByLabel("Pasted").fill("slept well\n20:00 12 ml, flush 10, bilious");
  await logIt(page);
  await expect(toMend(page)).toContainText("is not in the rows yet");
  await page.getByRole("button", { name: "Put it into the rows" }).click();
  await expect(cell(page, 4, "drained, mL")).toHaveValue("12 ml");
  await expect(page.getByText("Left out, for no figure stands there: slept well")).toBeVisible();
  await expect(page.getByLabel("Pasted")).toHaveValue("");
  await logIt(page);
  await expect(page.getByText("The diary is logged: 4 emptyings.")).toBeVisible();
});

test("bad rows are said by row beside their cells and mended, with nothing lost and nothing logged before", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube();
  await open(page, tube + diary);
  const typed = [
    ["-4 8:00", "forty"],
    ["", "35"],
    ["22:00", "half a bag"],
  ] as const;
  for (const [index, [when, drained]] of typed.entries()) {
    await cell(page, index + 1, "emptied at").fill(when);
    await cell(page, index + 1, "drained, mL").fill(drained);
  }
  await page.keyboard.press("Enter");
  await expect(toMend(page)).toBeFocused();
  await expect(toMend(page)).toContainText('Row 1: "forty" is not understood as a volume.');
  await expect(toMend(page)).toContainText("Row 2: Type a date");
  await expect(toMend(page)).toContainText('Row 3: How much is "half a bag"?');
  await expectAccessible(page);
  await expect(beside(page, "drained1")).toContainText("is not understood as a volume");
  await expect(cell(page, 2, "drained, mL")).toHaveValue("35");
  await cell(page, 1, "drained, mL").fill("40");
  await cell(page, 2, "emptied at").fill("14");
  await cell(page, 3, "drained, mL").fill("~300");
  await page.keyboard.press("Enter");
  await expect(page.getByText("The diary is logged: 3 emptyings.")).toBeVisible();
  await page.goto(`${tube}/output`);
  await expect(readings(page)).toHaveCount(3);
});

test("a row carries its own leak and what else went in, asked for below the rows; what is typed there is mended there", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube();
  await open(page, tube + diary);
  await cell(page, 1, "emptied at").fill("-4 8:00");
  await cell(page, 1, "drained, mL").fill("40");
  await cell(page, 2, "emptied at").fill("14:00");
  await cell(page, 2, "drained, mL").fill("35");
  await expect(cell(page, 2, "leak")).toHaveCount(0);
  const asks = page.getByRole("button", { name: "Leak or other fluid, row by row" });
  await asks.focus();
  await page.keyboard.press("Space");
  await expect(asks).toHaveCount(0);
  await expect(cell(page, 2, "leak")).toBeFocused();
  await page.keyboard.type("damp");
  await page.keyboard.press("Tab");
  const kept = page.waitForResponse(
    (answer) =>
      answer.url().includes("draft.save") && (answer.request().postData() ?? "").includes("contrast"),
  );
  await page.keyboard.type("contrast");
  await page.keyboard.press("Enter");
  await expect(toMend(page)).toContainText(
    'Row 2: "contrast" is not understood. Type each fluid with its volume',
  );
  await expect(beside(page, "leak2")).toHaveText("damp");
  await expectAccessible(page);
  // What is typed waits on the server within three seconds of the last key.
  await kept;
  await open(page, tube + diary);
  await expect(cell(page, 2, "leak")).toHaveValue("damp");
  await cell(page, 2, "other fluid in").fill("contrast 20");
  await logIt(page);
  await expect(page.getByText("The diary is logged: 2 emptyings.")).toBeVisible();
  await page.goto(`${tube}/output`);
  await expect(readings(page).filter({ hasText: "damp" })).toHaveCount(1);
  await expect(readings(page).filter({ hasText: "contrast" })).toHaveCount(1);
});

test("a pasted block brings leak and other fluid along", async ({ page, newTube }) => {
  const { tube } = await newTube();
  await open(page, tube + diary);
  await cell(page, 1, "emptied at").focus();
  await paste(page, "Time\tDrained\tLeak\tOther fluid\n-4 8:00\t40\tdamp\t\n14:00\t35\t\tcontrast 20");
  await expect(cell(page, 1, "leak")).toHaveValue("damp");
  await expect(beside(page, "otherIn2")).toHaveText("contrast 20 mL");
  await expect(page.getByText("2 emptyings; of 2 the net cannot be told.")).toBeVisible();
});

test("a diary does not scroll sideways on a phone, and each cell keeps its name", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube();
  await page.setViewportSize({ width: 390, height: 844 });
  await open(page, tube + diary);
  await cell(page, 1, "emptied at").fill("-4 8:00");
  await cell(page, 1, "drained, mL").fill("2 oz");
  await page.getByRole("button", { name: "Leak or other fluid, row by row" }).click();
  await cell(page, 1, "leak").fill("soaking");
  await expect(page.getByText("Row 1: drained, mL")).toBeVisible();
  await expect(page.getByText("Row 1: other fluid in")).toBeVisible();
  await expectAccessible(page);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(wide).toBeLessThanOrEqual(390);
  await expectReflow(page);
});
