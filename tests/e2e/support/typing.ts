import { expect, type Locator, type Page } from "@playwright/test";

/** Fills a form by its labels, opening what stands folded away. */
export async function type(page: Page, texts: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(texts)) {
    const field = page.getByLabel(label, { exact: true });
    await field.waitFor({ state: "attached" });
    if (!(await field.isVisible())) await page.getByText("More that is known").click();
    await field.fill(text);
  }
}

export const save = (page: Page, act: string): Promise<void> =>
  page.getByRole("button", { name: act, exact: true }).click();

/** Waits until a form's act stands on the server. Leaving the page before that would leave it unsent. */
export const saved = (page: Page): Promise<void> =>
  expect(page.getByRole("button", { name: "Undo", exact: true })).toBeVisible();

/** Goes to a form and waits until its keys are listened to. */
export async function open(page: Page, form: string): Promise<void> {
  await page.goto(form);
  const fields = page.locator("form", {
    has: page.getByRole("button", { name: "Leave, keep what is typed" }),
  });
  await expect(fields.locator("button[type=submit]")).toBeEnabled();
}

/** The summary of what is to mend, on top of the form. */
export const toMend = (page: Page) => page.getByRole("region", { name: /things? to mend/ });

/** Rows of the story that say so, on a page that shows one. */
export const storyRows = (page: Page, said: RegExp) =>
  page
    .getByRole("table", { name: /^Story/ })
    .getByRole("row")
    .filter({ hasText: said });

export const hasFocus = (target: Locator): Promise<boolean> =>
  target.evaluate((element) => element === document.activeElement);

/** Presses the finder's key until it has the focus. From then on the page's script runs, which nothing on it shows. */
export async function findByKey(page: Page): Promise<void> {
  const finder = page.getByLabel("Find a patient by name, number, birth date or telephone");
  await expect(async () => {
    await page.keyboard.press("/");
    expect(await hasFocus(finder)).toBe(true);
  }).toPass();
}
