import { expect, test } from "#tests/e2e/support/test.ts";
import { open, save, saved, toMend, type } from "#tests/e2e/support/typing.ts";

const LABEL = "Telephone that patients ring";

test.describe("the clinic's telephone", () => {
  test.use({ role: "lead" });

  test("is set by the lead, stands on the papers, and is taken back at once", async ({ page, newTube }) => {
    const { tube } = await newTube({ tube: { kind: "pcn l", retention: "locking loop" } });
    await page.goto("/clinic");
    await expect(page.getByText("555 0100").first()).toBeVisible();
    await page.getByRole("link", { name: "Set the telephone" }).click();
    await open(page, "/clinic/telephone");
    await expect(page.getByLabel(LABEL, { exact: true })).toHaveValue("555 0100");

    await test.step("what is no number is asked again beside its field, and nothing typed is lost", async () => {
      await type(page, { [LABEL]: "555 0100 after 5 pm" });
      await save(page, "Set the telephone");
      await expect(toMend(page)).toContainText('"555 0100 after 5 pm" is not one telephone number.');
      await expect(page.getByLabel(LABEL, { exact: true })).toHaveValue("555 0100 after 5 pm");
    });

    await type(page, { [LABEL]: "555 0177 ext 3" });
    await save(page, "Set the telephone");
    await saved(page);
    const undo = page.getByRole("button", { name: "Undo", exact: true });

    await test.step("the card and the diary say it", async () => {
      const papers = await page.context().newPage();
      for (const paper of ["card", "diary-sheet"]) {
        await papers.goto(`${tube}/${paper}`);
        await expect(papers.getByText("555 0177 ext 3").first()).toBeVisible();
      }
      await papers.goto("/clinic");
      const changes = papers.getByRole("table", { name: /^Changes of the telephone/ });
      await expect(changes.getByRole("row").nth(1)).toContainText("555 0177 ext 3");
      await expect(changes.getByRole("row").nth(1)).toContainText("Lorne Leadbeater");
      await papers.goto("/audit");
      await expect(
        papers.getByRole("table", { name: /^Done/ }).getByText("clinic: telephone").first(),
      ).toBeVisible();
      await papers.close();
    });

    await undo.click();
    await expect(page.getByText(/^Undone: /)).toBeVisible();
    await page.goto("/clinic");
    await expect(page.locator("dd").getByText("555 0100", { exact: true })).toBeVisible();
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});

test.describe("for a nurse", () => {
  test.use({ role: "nurse" });

  test("there is nothing to set", async ({ page }) => {
    await page.goto("/clinic/telephone");
    await expect(page.getByRole("button", { name: "Set the telephone" })).toHaveCount(0);
    await expect(page.getByRole("link", { name: "Clinic", exact: true })).toHaveCount(0);
  });
});
