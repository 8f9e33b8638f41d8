import { expectAccessible, expectReflow, expectTargetSize } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/test.ts";

for (const colorScheme of ["light", "dark"] as const) {
  test.describe(`on a ${colorScheme} ground`, () => {
    test.use({ colorScheme });

    test("the sign-in page, with and without something to mend", async ({ page }) => {
      await page.goto("/sign-in");
      await expectAccessible(page);
      await page.getByLabel("User name").fill("nobody-of-that-name");
      await page.getByLabel("Password").fill("not the password at all");
      await page.keyboard.press("Enter");
      await expect(page.getByRole("region", { name: "One thing to mend" })).toBeFocused();
      await expectAccessible(page);
      await expectTargetSize(page);
      await expectReflow(page);
    });

    test("a page that does not exist", async ({ page, complaints }) => {
      await page.goto("/no-such-page");
      expect(complaints.splice(0)).toHaveLength(1);
      await expectAccessible(page);
      await expectReflow(page);
    });

    test.describe("signed in", () => {
      test.use({ role: "nurse" });

      test("the page of keys", async ({ page }) => {
        await page.goto("/keys");
        await expectAccessible(page);
        await expectTargetSize(page);
        await expectReflow(page);
      });
    });
  });
}
