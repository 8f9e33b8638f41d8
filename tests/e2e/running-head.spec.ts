import type { Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/test.ts";

const head = (page: Page) => page.getByRole("banner").first();

/** The middle of each word of the head, from the top of the page, in px: those of one line differ by no more than a letter's drop. */
const middles = (page: Page): Promise<number[]> =>
  head(page)
    .locator("nav a, input, button, span:not([data-paper-only])")
    .evaluateAll((all) =>
      all.map((part) => {
        const { top, height } = part.getBoundingClientRect();
        return top + height / 2;
      }),
    );

const daily = ["Today", "Exchanges", "Visits", "Calls", "Reviews", "Patients", "Clinic's books"];
const ofEveryone = ["Sizes", "Shelf", "Protocol", "Proposed dates", "Calendar", "Rooms"];

const booksOf = {
  caller: [...ofEveryone, "Staff", "Keys"],
  physician: [...ofEveryone, "Bring in a list", "Hospital's bookings", "Staff", "Keys"],
  nurse: [...ofEveryone, "Bring in a list", "Hospital's bookings", "Staff", "Keys"],
  lead: [
    ...ofEveryone,
    "Bring in a list",
    "Hospital's bookings",
    "Figures",
    "Staff",
    "Clinic",
    "Who saw and did what",
    "Export",
    "Keys",
  ],
} as const;

for (const role of ["caller", "physician", "nurse", "lead"] as const) {
  test.describe(`a ${role}`, () => {
    test.use({ role });

    test("has the daily pages in one line of the head, and every other page of theirs behind its last word", async ({
      page,
    }) => {
      await page.setViewportSize({ width: 1280, height: 800 });
      await page.goto("/");
      const pages = page.getByRole("navigation", { name: "Pages" });
      await expect(pages.getByRole("link")).toHaveText(daily);
      const found = await middles(page);
      expect(found.length).toBeGreaterThan(daily.length + 3);
      expect(Math.max(...found) - Math.min(...found)).toBeLessThan(10);
      await pages.getByRole("link", { name: "Today" }).focus();
      for (let pressed = 1; pressed < daily.length; pressed += 1) await page.keyboard.press("Tab");
      await page.keyboard.press("Enter");
      await expect(page.getByRole("heading", { name: "Which of the clinic's books?" })).toBeVisible();
      await expect(pages.locator('[aria-current="page"]')).toHaveText("Clinic's books");
      await expect(page.getByRole("main").getByRole("link")).toHaveText([...booksOf[role]]);
      await expect(
        page.getByRole("contentinfo").getByRole("navigation", { name: "Clinic's books" }).getByRole("link"),
      ).toHaveText([...booksOf[role]]);
    });

    test("can open every one of them", async ({ page }) => {
      for (const word of booksOf[role]) {
        // Anew each time: a browser that keeps every page that it came from does not always close them all.
        await page.goto("/books");
        await page.getByRole("main").getByRole("link", { name: word, exact: true }).click();
        await expect(page).not.toHaveURL(/\/books$/);
        await expect(page.getByText("Your role may not do this")).toHaveCount(0);
      }
    });
  });
}

test.describe("without a script", () => {
  test.use({ role: "lead", javaScriptEnabled: false });

  test("the clinic's books are two links away, on a phone too", async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto("/");
    await page
      .getByRole("navigation", { name: "Pages" })
      .getByRole("link", { name: "Clinic's books" })
      .click();
    await page.getByRole("main").getByRole("link", { name: "Protocol" }).click();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("Which rows are in force?");
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});
