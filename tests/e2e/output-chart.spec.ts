import { withDemoAddresses } from "#tests/e2e/support/demo-addresses.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { record } from "#tests/e2e/support/record.ts";
import { open, type } from "#tests/e2e/support/typing.ts";

test.describe("the output chart", () => {
  test.use({ role: "physician" });

  test.beforeEach(async ({ page, clinic }) => {
    await page.goto(withDemoAddresses(clinic.database, ({ tube }) => `${tube("Fennimoor")}/output`));
  });

  test("goes from bar to bar by Tab, each with its figures", async ({ page }) => {
    const bars = page.locator("figure svg g[tabindex='0']");
    const count = await bars.count();
    expect(count).toBeGreaterThan(2);
    await bars.first().focus();
    for (let index = 0; index < count; index += 1) {
      const bar = bars.nth(index);
      await expect(bar).toBeFocused();
      await expect(bar.locator("tspan").first()).toBeVisible();
      await expect(page.locator("figure svg tspan").filter({ visible: true })).not.toHaveCount(0);
      await page.keyboard.press("Tab");
    }
    await expect(bars.last()).not.toBeFocused();
  });

  test("has a title, a line in words, and its figures in the tables beneath", async ({ page }) => {
    const chart = page.locator("figure svg").first();
    await expect(chart.locator("> title")).toHaveText(/^Output of /);
    await expect(chart.locator("> desc")).toHaveText(/readings? up to .*net .*mL\/24 h/);
    await expect(page.getByRole("table", { name: "Net by day, newest first" })).toBeVisible();
  });

  test("folds what stands behind the figures, and a physician is told of the span", async ({ page }) => {
    const why = page.locator("details", { hasText: "Why, behind the figures" });
    await expect(why.getByText("None of them raises an alarm")).toBeHidden();
    await why.locator("summary").click();
    await expect(why.getByText("None of them raises an alarm")).toBeVisible();
    await expect(why.getByText(/^Median$/)).toBeVisible();
    await expect(why.getByText(/^If unchanged$/)).toBeVisible();
  });
});

test.describe("a small chart in a list", () => {
  test.use({ role: "physician" });

  test("stands beside each tube that has output, with its words and what was logged last", async ({
    page,
    clinic,
  }) => {
    const asked = ["Kettlebourne-Sprig", "Torrentine"] as const;
    for (const name of asked) {
      await page.goto(withDemoAddresses(clinic.database, ({ patient }) => patient(name)));
      const rows = page.getByRole("table", { name: "Tubes whose record has not ended" }).locator("tbody tr");
      const row = rows
        .filter({ has: page.getByRole("img", { name: /^Output of .*, the last 14 days/ }) })
        .first();
      const chart = row.getByRole("img", { name: /^Output of / });
      await expect(chart).toHaveAccessibleName(/readings? up to .*net .*mL\/24 h/);
      await expect(row.getByText(/^last: /)).toBeVisible();
    }
    await expect(page.getByText(/^Small charts: /)).toHaveCount(1);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });

  test("stands in the rows of the physician's queue", async ({ page, pageOf, newTube }) => {
    const { tube } = await newTube({
      tube: { kind: "abscess drain", side: "right", when: "-2 08:00", retention: "locking loop" },
    });
    const caller = await pageOf("caller");
    await open(caller, `${tube}/record/reading`);
    await type(caller, { "Drained, mL": "35", "Flush given, mL": "none" });
    await caller.keyboard.press("Enter");
    await expect(caller.getByText("The emptying is logged.")).toBeVisible();
    await record(caller, `${tube}/record/review-asked`, {
      act: "Ask for a review",
      typed: { "Review by": "today" },
    });
    await page.goto("/reviews");
    const row = page.getByRole("row").filter({ has: page.locator(`a[href="${tube}/review"]`) });
    await expect(row.getByRole("img", { name: /^Output of Right abscess drain/ })).toBeVisible();
    await page.emulateMedia({ forcedColors: "active" });
    await expect(row.getByRole("img")).toBeVisible();
  });
});

test.describe("tubes that are read together", () => {
  test.use({ role: "physician" });

  test("hard case 15: a biloma drain and a biliary drain stand under one another, each with what low means", async ({
    page,
    clinic,
  }) => {
    const addresses = withDemoAddresses(clinic.database, ({ tube, patient }) => ({
      biloma: `${tube("Kettlebourne-Sprig")}/output`,
      patient: patient("Kettlebourne-Sprig"),
    }));
    await page.goto(addresses.biloma);
    const own = page.getByRole("region", { name: /^Chart of Abscess drain/ });
    const linked = page.getByRole("region", { name: /^Chart of Right external biliary drain/ });
    await expect(own.getByText("A collection: low asks for a review")).toBeVisible();
    await expect(linked.getByText("It drains an organ: low is an alarm")).toBeVisible();
    await expect(linked.getByText(/^Linked: bile/)).toBeVisible();
    const daysOf = (chart: typeof own) => chart.locator("figure > svg text[dy='18']").allTextContents();
    const [above, beneath] = [await daysOf(own), await daysOf(linked)];
    expect(above.length).toBeGreaterThan(3);
    expect(beneath).toEqual(above);
    await page.goto(addresses.patient);
    await page.getByRole("link", { name: "Right external biliary drain" }).first().click();
    await page.getByRole("link", { name: "All days and readings" }).click();
    await expect(page.getByRole("region", { name: /^Chart of Abscess drain/ })).toBeVisible();
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });

  test("left, right and voided are summed day by day, and what is missing is named", async ({
    page,
    clinic,
  }) => {
    await page.goto(withDemoAddresses(clinic.database, ({ tube }) => `${tube("Rushwater-Tarn")}/output`));
    const urine = page.getByRole("table", { name: /^Urine by all routes/ });
    await expect(urine.getByRole("columnheader")).toHaveText([
      "Day",
      "Left nephrostomy",
      "Right nephrostomy",
      "Voided",
      "Sum",
      "Remarks",
    ]);
    const sums = urine.locator("tbody td[data-head='Sum']");
    await expect(sums.filter({ hasText: /^\d+(\.\d)? mL\/24 h$/ })).not.toHaveCount(0);
    await expect(sums.filter({ hasText: "cannot tell: voided not known" })).not.toHaveCount(0);
    await expect(urine.getByText("noted as not known")).toBeVisible();
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  });
});

test.describe("for a caller", () => {
  test.use({ role: "caller" });

  test("there are no dates if unchanged", async ({ page, clinic }) => {
    await page.goto(withDemoAddresses(clinic.database, ({ tube }) => `${tube("Fennimoor")}/output`));
    await page.locator("summary", { hasText: "Why, behind the figures" }).click();
    await expect(page.getByText(/^Median$/)).toBeVisible();
    await expect(page.getByText(/^If unchanged$/)).toHaveCount(0);
  });
});
