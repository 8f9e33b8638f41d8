import type { Page } from "@playwright/test";
import { withDemoAddresses } from "#tests/e2e/support/demo-addresses.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { record } from "#tests/e2e/support/record.ts";
import { open, save, saved, storyRows, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "physician" });

/** "in 43 days", as the tube's page has it of its exchange. */
const exchangeIn = async (page: Page): Promise<string | undefined> =>
  (await page.getByRole("main").textContent())?.match(/Exchange\s*(in \d+ days)/)?.[1];

test("a physician decides on a clamp trial while the exchange date stands, and a corrected reading flags that decision (hard cases 33, 36)", async ({
  page,
  pageOf,
  newTube,
}) => {
  const { tube } = await newTube();
  const caller = await pageOf("caller");
  await test.step("a caller logs an emptying", async () => {
    await open(caller, `${tube}/record/reading`);
    await type(caller, { "Drained, mL": "35", "Flush given, mL": "none" });
    await caller.keyboard.press("Enter");
    await expect(caller.getByText("The emptying is logged.")).toBeVisible();
  });

  await page.goto(tube);
  const before = await exchangeIn(page);
  expect(before).toBeDefined();

  await test.step("the physician reads the tube in one screen and decides", async () => {
    await page.goto(`${tube}/review`);
    await expect(page.getByRole("heading", { name: "What is to be decided of this tube?" })).toBeVisible();
    await expect(page.getByText("Not recorded: temperature")).toBeVisible();
    await expect(
      page.getByText("Does not apply: this kind never by volume").or(page.getByText(/Does not apply/)),
    ).toBeVisible();
    await record(page, `${tube}/record/review-decided`, {
      act: "Decide in review",
      chosen: { Decided: "Start a cap or clamp trial" },
      typed: { By: "+2", "Decided by": "Petra Physick", "In your words": "Dry by day, clear by night." },
    });
  });

  await test.step("the trial is a step with a day and an owner, and the exchange stands", async () => {
    await page.goto(tube);
    await expect(page.getByText("Start a cap or clamp trial").first()).toBeVisible();
    expect(await exchangeIn(page)).toBe(before);
    await expect(storyRows(page, /Reviewed: by Petra Physick, cap or clamp trial by/)).toHaveCount(1);
  });

  await test.step("a reading that is corrected afterwards flags the decision, old and new side by side", async () => {
    await caller.goto(`${tube}/output`);
    const correct = caller.getByRole("table", { name: /^Readings/ }).getByRole("link", { name: "Correct" });
    await open(caller, (await correct.getAttribute("href")) ?? "");
    await type(caller, { "Why it is changed": "misread", "Drained, mL": "350" });
    await caller.getByLabel("Drained, mL").press("Enter");
    await saved(caller);
    await page.goto(`${tube}/review`);
    await expect(
      page.getByText("rested on figures that have changed since. Look at it again."),
    ).toBeVisible();
    const sides = page
      .getByRole("table", { name: /Seen then, and now/ })
      .getByRole("row")
      .last();
    await expect(sides).toContainText("35 mL");
    await expect(sides).toContainText("350 mL");
    await page.goto("/reviews");
    await expect(page.getByRole("heading", { name: "Which tubes wait for a decision?" })).toBeVisible();
  });
});

test("somebody who opens a review is told who else is at it, and what was decided meanwhile", async ({
  page,
  pageOf,
  newTube,
}) => {
  const { tube } = await newTube();
  const nurse = await pageOf("nurse");
  const others = nurse.getByRole("list", { name: "Who else is at this review" });
  await nurse.goto(`${tube}/review`);
  await expect(nurse.getByRole("heading", { name: "What is to be decided of this tube?" })).toBeVisible();
  await expect(others).toHaveCount(0);
  await page.goto(`${tube}/review`);
  await expect(page.getByRole("heading", { name: "What is to be decided of this tube?" })).toBeVisible();
  await nurse.reload();
  await expect(others).toContainText(/Petra Physick opened this review (just now|a minute ago)\./);
  await record(page, `${tube}/record/review-decided`, {
    act: "Decide in review",
    chosen: { Decided: "Imaging" },
    typed: { By: "+2", "Decided by": "Petra Physick" },
  });
  await nurse.reload();
  await expect(others).toContainText(
    /Petra Physick decided at \d\d:\d\d\. Reviewed: by Petra Physick, imaging/,
  );
  await page.goto(`${tube}/review`);
  await expect(page.getByRole("list", { name: "Who else is at this review" })).toHaveCount(0);
});

test("on a desk's screen the questions, the verdict and the seven days stand above the fold", async ({
  page,
  clinic,
}) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  const tubes = withDemoAddresses(clinic.database, ({ tube }) => [tube("Buttonwimple"), tube("Fiddlesnood")]);
  for (const tube of tubes) {
    await page.goto(`${tube}/review`);
    for (const shown of [
      page.getByText("Last study", { exact: true }),
      page.getByText(/Meeting a number means only that/).first(),
      page.getByRole("table", { name: /^The last 7 days/ }),
    ]) {
      const box = await shown.boundingBox();
      expect((box?.y ?? 800) + (box?.height ?? 0)).toBeLessThanOrEqual(800);
    }
  }
});

test("keys lead through the queue, and nothing on a phone scrolls sideways", async ({
  page,
  pageOf,
  newTube,
}) => {
  const first = await newTube();
  const second = await newTube();
  const caller = await pageOf("caller");
  for (const { tube } of [first, second])
    await record(caller, `${tube}/record/review-asked`, {
      act: "Ask for a review",
      typed: { "Review by": "today" },
    });
  await page.goto("/reviews");
  const due = page.getByRole("table", { name: /^Review due/ });
  await expect(due.getByRole("link", { name: "Review the tube" }).first()).toBeVisible();
  await page.goto(`${first.tube}/review`);
  const next = page.getByRole("link", { name: "Next ]" });
  const previous = page.getByRole("link", { name: "Previous [" });
  const leads = (await next.count()) > 0 ? next : previous;
  const to = await leads.getAttribute("href");
  await expect(async () => {
    await page.keyboard.press(leads === next ? "]" : "[");
    await expect(page).toHaveURL(new RegExp(`${to}$`), { timeout: 2_000 });
  }).toPass();
  await page.setViewportSize({ width: 390, height: 844 });
  await expect(page.getByRole("heading", { name: "What is to be decided of this tube?" })).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
});

test.describe("a nurse", () => {
  test.use({ role: "nurse" });

  test("sees what was decided and does it; deciding is the physician's", async ({
    page,
    pageOf,
    newTube,
  }) => {
    const { tube } = await newTube();
    const physician = await pageOf("physician");
    await record(physician, `${tube}/record/review-decided`, {
      act: "Decide in review",
      chosen: { Decided: "Imaging" },
      typed: { By: "+2", "Decided by": "Petra Physick" },
    });
    await page.goto(`${tube}/record/review-decided`);
    await expect(page.getByRole("button", { name: "Decide in review" })).toHaveCount(0);
    await open(page, `${tube}/record/decision-done`);
    await page.getByLabel("What was decided").selectOption({ label: "Imaging" });
    await type(page, { "How it came out": "film seen" });
    await save(page, "Record a decision as done");
    await saved(page);
    await page.goto(tube);
    await expect(storyRows(page, /Done as decided: imaging/)).toHaveCount(1);
  });

  test("bad input is asked about beside its field and nothing typed is lost", async ({ pageOf, newTube }) => {
    const { tube } = await newTube();
    const physician = await pageOf("physician");
    await open(physician, `${tube}/record/review-decided`);
    await physician.getByLabel("Decided", { exact: true }).selectOption({ label: "Imaging" });
    await type(physician, { By: "+2", "Decided by": "Petra Physick" });
    await physician.getByText("More that is known").click();
    await physician.getByLabel("Decided too").selectOption({ label: "Imaging" });
    await save(physician, "Decide in review");
    await expect(
      physician.getByText("This is decided above already: leave it out here.").first(),
    ).toBeVisible();
    await expect(physician.getByLabel("By", { exact: true })).toHaveValue("+2");
  });
});
