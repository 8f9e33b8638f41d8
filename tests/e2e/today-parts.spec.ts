import { expectAccessible, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";

test.use({ role: "nurse" });

const UNDATED = 43;

test("tubes without a date stand in a part of their own, counted, and the rest of them is one link away", async ({
  page,
  newTube,
}) => {
  for (let entered = 0; entered < UNDATED; entered += 1)
    await newTube({
      patient: { familyName: "Dateless" },
      tube: { kind: "lymphocele drain", side: "left", when: "?" },
    });
  await page.goto("/");
  const line = page.getByRole("navigation", { name: "Parts of today" }).getByRole("listitem");
  // Those of the invented clinic stand there too.
  const said = await line.filter({ hasText: "Without a date" }).textContent();
  expect(Number(said?.match(/\d+$/))).toBeGreaterThanOrEqual(UNDATED);
  await page.goto("/?kind=lymphocele");
  const part = page.getByRole("table", { name: /^Without a date/ });
  await expect(part.locator("caption")).toHaveText(/40 of 43/);
  await expect(part.getByRole("row", { name: /Dateless/ })).toHaveCount(40);
  await expect(part.getByRole("row").nth(1).getByRole("link").last()).toHaveAttribute(
    "href",
    /^\/tubes\/[^/]+\/record\/clock-dated$/,
  );
  await expect(page.getByText("40 of 43 stand here.")).toBeVisible();

  await page.getByRole("link", { name: "Show all 43" }).click();
  await page.waitForURL(/\/today\/undated\?kind=lymphocele/);
  await expect(part.getByRole("row", { name: /Dateless/ })).toHaveCount(UNDATED);
  await expectAccessible(page);
  await expectReflow(page);
  await page.getByRole("link", { name: "Back to the whole of Today" }).click();
  await page.waitForURL(/\/\?kind=lymphocele/);
});

test("a page after the last says so, and leads back with its filter", async ({ page }) => {
  await page.goto("/today/past-latest?side=right&page=9");
  await expect(page.getByText("No row comes after these.")).toBeVisible();
  await expect(page.getByRole("link", { name: "The rows before these" })).toHaveAttribute(
    "href",
    "/today/past-latest?side=right&page=8",
  );
});
