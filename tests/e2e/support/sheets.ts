import type { Page } from "@playwright/test";

export const formats = ["A4", "Letter"] as const;

/** How many sheets the page prints on: page objects stand in the file uncompressed. */
export async function sheetsOf(page: Page, format: (typeof formats)[number]): Promise<number> {
  const pdf = (await page.pdf({ format })).toString("latin1");
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}
