import { expect, test } from "#tests/e2e/support/test.ts";

test.use({ role: "caller" });

test("every row of the table stands on its page, each figure of an interval, the fever and what is asked in a call too", async ({
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
  const questions = page.getByRole("table", { name: /^Questions of a call/ });
  await expect(questions.getByRole("row", { name: /^Question: draining/ })).toContainText(
    'Asked of each tube that is open: role collection, drains an organ, venting. No: red flag "dry"',
  );
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});
