import { expect, test } from "#tests/e2e/support/test.ts";

test.use({ role: "caller" });

test("every row of the table stands on its page, each figure of an interval and the fever too", async ({
  page,
}) => {
  await page.goto("/protocol");
  const intervals = page.getByRole("table", { name: /^Intervals, in days/ });
  const rowOf = (id: string) =>
    intervals.getByRole("row").filter({ has: page.getByRole("rowheader", { name: id, exact: true }) });
  await expect(rowOf("cholecystostomy")).toContainText("21 transhepatic, 42 transperitoneal");
  await expect(rowOf("nephrostomy")).toContainText("mature from 28");
  await expect(rowOf("balloon gastrostomy")).toContainText("28, 42 if slow to heal");
  await expect(page.getByRole("row", { name: /^Fever/ })).toContainText("from 38 °C on");
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});
