import { expect, type Locator, type Page } from "@playwright/test";
import { open, save, saved, type } from "#tests/e2e/support/typing.ts";

type Texts = Readonly<Record<string, string>>;

/** What is chosen from lists, what is typed, and the button that saves it. */
export type Recorded = { readonly act: string; readonly chosen?: Texts; readonly typed?: Texts };

/** Opens a form, chooses what it lists, types the rest and saves. */
export async function record(page: Page, form: string, said: Recorded): Promise<void> {
  await open(page, form);
  for (const [label, choice] of Object.entries(said.chosen ?? {}))
    await page.getByLabel(label, { exact: true }).selectOption({ label: choice });
  await type(page, said.typed ?? {});
  await save(page, said.act);
  await saved(page);
}

/** Takes back the newest entry of a patient's story. */
export async function undoNewest(page: Page, patient: string): Promise<void> {
  await page.goto(patient);
  await page.locator("#story").getByRole("link", { name: "Undo" }).first().click();
  await pressUndo(page, page.getByText(/^Undone/));
}

/** Presses Undo until it is answered. A press before the page's script runs is lost, and nothing shows when it does. */
export async function pressUndo(page: Page, answer: Locator): Promise<void> {
  const button = page.getByRole("button", { name: "Undo", exact: true });
  await expect(async () => {
    if (!(await answer.isVisible())) await button.click({ timeout: 1_000 });
    await expect(answer).toBeVisible({ timeout: 2_000 });
  }).toPass();
}

/** What is open of the patient and of no tube, on the patient's page, beside the call that is one for several tubes. */
export const openOfPatient = (page: Page): Locator =>
  page.getByRole("article").filter({ hasNotText: /^\s*Call\b/ });
