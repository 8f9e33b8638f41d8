import { expectAccessible, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { expect, expectOnly, test } from "#tests/e2e/support/test.ts";
import { open, toMend, type } from "#tests/e2e/support/typing.ts";

/** What the API answers once a session has ended. */
const signedOut = {
  status: 401,
  json: {
    error: { message: "", code: -32001, data: { code: "UNAUTHORIZED", httpStatus: 401, refusals: [] } },
  },
};

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

      test("a form with things to mend, and the sign-in over it", async ({ page, newTube, complaints }) => {
        const { tube } = await newTube();
        await open(page, `${tube}/record/exchanged`);
        await type(page, { "Exchanged on": "soon", Size: "8", Note: "Draining well" });
        await page.getByLabel("Size").press("Enter");
        await expect(toMend(page)).toBeFocused();
        await expectAccessible(page);
        await page.route("**/api/trpc/record.exchanged", (route) => route.fulfill(signedOut));
        await type(page, { "Exchanged on": "today", Size: "8 f" });
        await page.getByLabel("Size").press("Enter");
        await expect(page.getByRole("dialog", { name: "Your sign-in has ended" })).toBeVisible();
        await expectAccessible(page);
        await expectReflow(page);
        expectOnly(complaints, "401 (Unauthorized)");
      });
    });
  });
}
