import type { Locator, Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { findByKey, hasFocus, open, storyRows } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

/** Presses Tab until the target has the focus; a page on which that takes too long is no page for the keyboard. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  const most = 120;
  for (let pressed = 0; pressed < most && !(await hasFocus(target)); pressed += 1)
    await page.keyboard.press("Tab");
  await expect(target).toBeFocused();
}

test("from Today to a saved exchange by keys alone", async ({ page, newTube }) => {
  const { tube } = await newTube({ patient: { familyName: "Aardwhistle" }, tube: { when: "-100" } });
  await page.goto("/");
  const row = page.getByRole("table", { name: /^Past latest/ }).getByRole("row", { name: /Aardwhistle/ });
  await tabTo(page, row.getByRole("link", { name: /Left nephrostomy/ }));
  await page.keyboard.press("Enter");
  await page.waitForURL(tube);
  await tabTo(page, page.getByRole("link", { name: "Record an exchange" }).first());
  await page.keyboard.press("Enter");
  await expect(page.getByLabel("Exchanged on")).toBeFocused();
  await expect(page.getByRole("button", { name: "Record an exchange" })).toBeEnabled();
  await page.keyboard.press("Enter");
  await expect(page.getByText("Record an exchange: saved.")).toBeVisible();
  await tabTo(page, page.getByRole("link", { name: "To the tube" }));
  await page.keyboard.press("Enter");
  await page.waitForURL(tube);
  await expect(storyRows(page, /Exchanged/)).toHaveCount(1);
});

test("from any page the key / leads to the finder, and a number to its patient", async ({
  page,
  newTube,
}) => {
  const { patient } = await newTube({ patient: { number: "00815" } });
  await page.goto("/protocol");
  await findByKey(page);
  await page.keyboard.type("00815");
  await page.keyboard.press("Enter");
  await page.waitForURL(patient);
});

const MOST_KEYS = 30;

/** Keys as they are pressed from the moment the form is open, a tab and a line's end as themselves, and what the story then says. */
const ordinary = [
  ["exchanged", "-1\t8f\t.035 in\n", /Exchanged: 8 F, takes 0\.035 in/],
  ["fell-out", "-1\ty\tpatient\n", /Fell out/],
  ["checked", "no leak\t\n", /no leak/],
] as const;

for (const [form, keys, said] of ordinary) {
  test(`an ordinary entry in at most 30 keys in the browser: ${form}`, async ({ page, newTube }) => {
    const { tube } = await newTube();
    await open(page, `${tube}/record/${form}`);
    const pressed = await countKeys(page);
    for (const key of keys) await page.keyboard.press(names[key] ?? key);
    await expect(page.getByText(/: saved\./)).toBeVisible();
    expect(await pressed()).toBe(keys.length);
    expect(keys.length).toBeLessThanOrEqual(MOST_KEYS);
    await page.goto(tube);
    await expect(storyRows(page, said)).toHaveCount(1);
  });
}

test("an ordinary emptying in at most 30 keys in the browser", async ({ page, newTube }) => {
  const { tube } = await newTube();
  await open(page, `${tube}/record/reading`);
  const pressed = await countKeys(page);
  for (const key of "35\t3 x 10\n") await page.keyboard.press(names[key] ?? key);
  await expect(page.getByText("The emptying is logged.")).toBeVisible();
  expect(await pressed()).toBeLessThanOrEqual(MOST_KEYS);
  await page.goto(`${tube}/output`);
  await expect(
    page.getByRole("table", { name: /^Readings/ }).getByRole("row", { name: /35 mL/ }),
  ).toHaveCount(1);
});

const names: Readonly<Record<string, string>> = { "\t": "Tab", "\n": "Enter", " ": "Space" };

/** Counts what the page itself hears of the keyboard. */
async function countKeys(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    document.body.dataset.keysHeard = "0";
    const heard = (): void => {
      document.body.dataset.keysHeard = String(Number(document.body.dataset.keysHeard) + 1);
    };
    document.addEventListener("keydown", heard, { capture: true });
  });
  return () => page.evaluate(() => Number(document.body.dataset.keysHeard));
}

/** What lies over the middle of the element that has the focus; null when nothing does. */
const liesOverFocus = (): string | null => {
  const focused = document.activeElement;
  if (focused === null || focused === document.body) return null;
  const { left, top, width, height } = focused.getBoundingClientRect();
  const seen = document.elementFromPoint(left + Math.min(width / 2, 8), top + height / 2);
  if (seen !== null && (focused.contains(seen) || seen.contains(focused))) return null;
  return `${focused.outerHTML} is under ${seen?.outerHTML ?? "nothing in sight"}`;
};

for (const [where, path, size] of [
  ["the page of a tube", "", { width: 1280, height: 500 }],
  ["a form, on a phone", "/record/exchanged", { width: 390, height: 500 }],
] as const) {
  test(`the focus is never hidden under the identity that stays in sight: ${where}`, async ({
    page,
    newTube,
  }) => {
    const { tube } = await newTube();
    await page.setViewportSize(size);
    await page.goto(tube + path);
    await page.locator("details").evaluateAll((all) => {
      for (const one of all) one.setAttribute("open", "");
    });
    await page.locator("footer a, main a, main button").last().focus();
    const hidden: string[] = [];
    const heading = page.getByRole("link", { name: "Clinic's books" });
    for (let pressed = 0; pressed < 120 && !(await hasFocus(heading)); pressed += 1) {
      const under = await page.evaluate(liesOverFocus);
      if (under !== null) hidden.push(under);
      await page.keyboard.press("Shift+Tab");
    }
    await expect(heading).toBeFocused();
    expect(hidden).toEqual([]);
  });
}
