import type { Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { formats, sheetsOf } from "#tests/e2e/support/sheets.ts";
import { open, save, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const expectNothingSideways = async (page: Page): Promise<void> => {
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
};

const loop = { retention: "locking loop" };
const nephrostomy = { kind: "pcn l", ...loop };
const abscess = { kind: "abscess drain", side: "right", flushOrder: "10 mL x 3 a day", ...loop };

/** A tube of each with the most to say: a long name, an order in words. */
const tubes = [
  ["a nephrostomy", nephrostomy, "Left nephrostomy"],
  ["an abscess drain", abscess, "Right abscess drain"],
] as const;

for (const [name, tube, title] of tubes) {
  test(`the output diary of ${name} prints on two sheets at most, and on its own`, async ({
    page,
    newTube,
  }) => {
    const entered = await newTube({ tube });
    await page.goto(entered.tube);
    await page.getByRole("link", { name: "Output diary for the patient" }).click();
    const sheet = page.getByRole("article");
    await expect(sheet.getByText(title, { exact: true })).toBeVisible();
    await expect(sheet.getByText("Quimbleton, Ada").first()).toBeVisible();
    await expect(sheet.getByRole("table").first().locator("tbody tr")).toHaveCount(14);
    await expect(sheet.getByText("EXAMPLE", { exact: true })).toBeVisible();
    await expect(sheet.getByText("555 0100").first()).toBeVisible();

    await test.step("units are chosen on the page, and nothing of the patient is in the address", async () => {
      await expect(page.getByRole("columnheader", { name: "Came out, mL" })).toBeVisible();
      await page.getByRole("link", { name: "US fluid ounces" }).click();
      await expect(page.getByRole("columnheader", { name: "Came out, fl oz" })).toBeVisible();
      expect(new URL(page.url()).search).toBe("?units=oz");
    });

    await test.step("on paper it is set in 14 pt at least, and nothing of the book is on it", async () => {
      await page.emulateMedia({ media: "print" });
      // 14 pt at 96 px to the inch.
      const smallest = await sheet.evaluate((article) =>
        Math.min(
          ...[...article.querySelectorAll("p, li, th, h2, h3")].map((one) =>
            Number.parseFloat(getComputedStyle(one).fontSize),
          ),
        ),
      );
      expect(smallest).toBeGreaterThanOrEqual((14 * 96) / 72 - 0.01);
      await expect(page.getByText("scheduling nurse")).toBeHidden();
      await expect(page.getByRole("heading", { level: 1 })).toBeHidden();
      for (const format of formats) expect(await sheetsOf(page, format)).toBe(2);
      await page.emulateMedia({ media: "screen" });
    });
    await expectNothingSideways(page);
  });

  test(`the card of ${name} prints on one sheet, at the size of a bank card`, async ({ page, newTube }) => {
    const entered = await newTube({ tube });
    await page.goto(entered.tube);
    await page.getByRole("link", { name: "Tube card for the wallet" }).click();
    const front = page.getByRole("region", { name: "Front of the card" });
    for (const text of ["Quimbleton, Ada", title, "locking loop", "8 F"])
      await expect(front.getByText(text, { exact: true })).toBeVisible();
    await expect(front.getByText("keep this card with you")).toBeVisible();
    const back = page.getByRole("region", { name: "Back of the card" });
    await expect(back.getByText("555 0100")).toBeVisible();
    await expect(back.getByText(/If it comes out/)).toBeVisible();
    await page.emulateMedia({ media: "print" });
    // ISO/IEC 7810, ID-1: 85.60 by 53.98 mm; 96 px to the inch.
    for (const side of [front, back]) {
      const box = await side.boundingBox();
      expect(((box?.width ?? 0) / 96) * 25.4).toBeCloseTo(85.6, 1);
      expect(((box?.height ?? 0) / 96) * 25.4).toBeCloseTo(53.98, 1);
    }
    for (const format of formats) expect(await sheetsOf(page, format)).toBe(1);
    await page.emulateMedia({ media: "screen" });
    await expectNothingSideways(page);
  });
}

test("a tube without output has no sheet and says why; a stent still has its card", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube({ tube: { kind: "jj l", takes: "" } });
  await page.goto(tube);
  await expect(page.getByRole("link", { name: "Tube card for the wallet" })).toBeVisible();
  await expect(page.getByRole("link", { name: "Output diary for the patient" })).toHaveCount(0);
  await page.goto(`${tube}/diary-sheet`);
  await expect(
    page.getByText("This tube lies wholly inside the body: there is no output to write down."),
  ).toBeVisible();
  await expect(page.getByRole("table")).toHaveCount(0);
});

test("a flush that is ordered as none has no column", async ({ page, newTube }) => {
  const { tube } = await newTube({ tube: abscess });
  await page.goto(`${tube}/diary-sheet`);
  await expect(page.getByText("Flush, as ordered: 10 mL x 3 a day.")).toBeVisible();
  await open(page, `${tube}/record/facts-noted`);
  await type(page, { "Flush ordered": "none" });
  await save(page, "Note facts of the tube");
  await expect(page.getByText("Note facts of the tube: saved.")).toBeVisible();
  await page.goto(`${tube}/diary-sheet`);
  await expect(page.getByRole("columnheader", { name: "Came out, mL" })).toBeVisible();
  await expect(page.getByRole("columnheader", { name: /Flush/ })).toHaveCount(0);
});
