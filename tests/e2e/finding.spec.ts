import type { Page } from "@playwright/test";
import { expectAccessible, expectPlainPrint, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { withDemoAddresses } from "#tests/e2e/support/demo-addresses.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { test as testOfItsOwn } from "#tests/e2e/support/test.ts";
import { findByKey } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const sizes = [
  ["desktop", { width: 1280, height: 800 }],
  ["phone", { width: 390, height: 844 }],
] as const;

/** Ottoline Brackenfold of the demo: record number 004711, born 3 Apr 1951, telephone 555 0117. */
for (const typed of ["ottoline brack", "4711", "004711", "3 apr 1951", "3/4/1951", "555-0117"]) {
  test(`the finder leads to the one who is meant, and no address holds what was typed: ${typed}`, async ({
    page,
    clinic,
  }) => {
    const asked: string[] = [];
    page.on("request", (request) => asked.push(decodeURIComponent(request.url())));
    await page.goto("/protocol");
    await findByKey(page);
    await page.keyboard.type(typed);
    await page.keyboard.press("Enter");
    await page.waitForURL(withDemoAddresses(clinic.database, ({ patient }) => patient("Brackenfold")));
    expect(asked.filter((address) => address.toLowerCase().includes(typed))).toEqual([]);
  });
}

test("a search leads to the only one it means, and lists several", async ({ page, newTube }) => {
  await newTube({ patient: { familyName: "Twinkleford", givenName: "Ada", number: "88123" } });
  await newTube({ patient: { familyName: "Twinkleford", givenName: "Zoë", number: "99123" } });
  await page.goto("/keys");
  await page.getByLabel("Find a patient by name, number, birth date or telephone").fill("zoe twinkle");
  await page.keyboard.press("Enter");
  await expect(page.getByText("Twinkleford, Zoë").first()).toBeVisible();
  await page.getByLabel("Find a patient by name, number, birth date or telephone").fill("twinkleford");
  await page.keyboard.press("Enter");
  await page.waitForURL("/find");
  const rows = page.getByRole("table", { name: /^Patients/ }).getByRole("row");
  await expect(rows.filter({ hasText: "Twinkleford" })).toHaveCount(2);
  await expectAccessible(page);
  await expectReflow(page);
});

test("a date that can be read two ways is looked for as both, and the page says so", async ({ page }) => {
  await page.goto("/patients");
  await page.getByLabel("Find a patient by name, number, birth date or telephone").fill("3/4/1903");
  await page.keyboard.press("Enter");
  await page.waitForURL("/find");
  await expect(page.getByText("Looked for as a birth date: Fri 3 Apr 1903 or Wed 4 Mar 1903.")).toBeVisible();
  await expect(page.getByText(/^Nobody by that name/)).toBeVisible();
});

test("the way to Patients puts the focus into the finder", async ({ page }) => {
  await page.goto("/keys");
  await page.getByRole("link", { name: "Patients" }).click();
  await page.waitForURL("/patients#finder");
  await expect(page.getByLabel("Find a patient by name, number, birth date or telephone")).toBeFocused();
});

/** On a narrow page the line is folded. */
async function openFilter(page: Page): Promise<void> {
  const fold = page.getByText(/^(Show only some tubes|Change what is shown)$/);
  if (await fold.isVisible()) await fold.click();
}

/** Exchanges shows so many tubes on one page. */
const ROWS_OF_A_PAGE = 50;

const others = (named: readonly string[]) => named.filter((tube) => !tube.startsWith("Left nephrostomy"));
const tubes = (page: Page) => page.getByRole("table").getByRole("link", { name: /nephrostomy|stent|drain/i });

for (const [name, size] of sizes) {
  test.describe(`filters, ${name}`, () => {
    test.beforeEach(({ page }) => page.setViewportSize(size));

    test("a list shows what is asked for by a short form, says so, and lets go of it again", async ({
      page,
    }) => {
      await page.goto("/exchanges");
      expect(others(await tubes(page).allTextContents())).not.toEqual([]);
      await openFilter(page);
      await page.getByLabel("Kind of tube").fill("pcn l");
      await page.keyboard.press("Enter");
      await page.waitForURL("/exchanges?kind=pcn+l");
      const lede = page.getByText(/^Left nephrostomy: \d+, the longest due first$/);
      await expect(lede).toBeVisible();
      const shown = await tubes(page).allTextContents();
      expect(shown.length).toBeGreaterThan(0);
      expect(others(shown)).toEqual([]);
      const left = Number(/: (\d+),/.exec((await lede.textContent()) ?? "")?.[1]);
      expect(shown.length).toBe(Math.min(left, ROWS_OF_A_PAGE));
      await openFilter(page);
      await expect(page.getByLabel("Side")).toHaveValue("left");
      await expectAccessible(page);
      await expectPlainPrint(page);
      await expect(lede).toBeVisible();
      await page.emulateMedia({ media: "screen" });
      await page.getByRole("link", { name: "Take the filter away" }).click();
      await page.waitForURL("/exchanges");
      await expect.poll(async () => others(await tubes(page).allTextContents())).not.toEqual([]);
    });

    test("Today filters every part, and keeps the filter on the way back", async ({ page }) => {
      await page.goto("/");
      await openFilter(page);
      await page.getByLabel("Side").selectOption("right");
      await page.getByRole("button", { name: "Show" }).click();
      await page.waitForURL("/?side=right");
      await expect(page.getByText("Side right")).toBeVisible();
      await expectAccessible(page);
      await page.goto("/keys");
      await page.goBack();
      await page.waitForURL("/?side=right");
      await openFilter(page);
      await expect(page.getByLabel("Side")).toHaveValue("right");
      await expectReflow(page);
    });

    test("nothing under a filter is said, with the way out", async ({ page }) => {
      for (const path of ["/exchanges", "/"]) {
        await page.goto(`${path}?kind=cecostomy&side=transplant`);
        const said = page.getByText("Nothing stands under this filter.");
        await expect(said).toBeVisible();
        await said.getByRole("link", { name: "Take the filter away" }).click();
        await page.waitForURL(path);
      }
    });

    test("a word that no filter has is a sentence, and nothing is listed as if it were", async ({ page }) => {
      for (const path of ["/exchanges", "/"]) {
        const answer = await page.goto(`${path}?kind=hose&owner=%40nobody`);
        expect(answer?.status()).toBe(200);
        await expect(page.getByText(/^"hose" is not one of: nephrostomy,/)).toBeVisible();
        await expect(page.getByText(/^"@nobody" is not one of: scheduling nurse,/)).toBeVisible();
        await expect(page.getByLabel("Kind of tube")).toHaveValue("hose");
        await expect(page.getByRole("table")).toHaveCount(0);
        await expectAccessible(page);
        await expectReflow(page);
        await page.setViewportSize(size);
      }
    });
  });
}

testOfItsOwn.describe("without scripts", () => {
  testOfItsOwn.use({ role: "nurse", javaScriptEnabled: false });

  testOfItsOwn("the finder finds and the filter filters", async ({ page }) => {
    await page.goto("/exchanges");
    await page.getByLabel("Kind of tube").fill("JJ");
    await page.getByLabel("Owner").selectOption("physician");
    await page.getByRole("button", { name: "Show" }).click();
    await page.waitForURL("/exchanges?kind=JJ&owner=physician");
    await expect(page.getByText(/^Ureteral stent, owned by physician: \d+/)).toBeVisible();
    await page.getByLabel("Find a patient by name, number, birth date or telephone").fill("brackenfold");
    await page.getByRole("button", { name: "Find" }).click();
    await page.waitForURL(/\/patients\/[\w-]+$/);
  });
});
