import type { Page } from "@playwright/test";

export const formats = ["A4", "Letter"] as const;

/** How many sheets the page prints on, or on the size and turn that it asks for itself: page objects stand in the file uncompressed. */
export async function sheetsOf(page: Page, format: (typeof formats)[number] | "its own"): Promise<number> {
  const asked = format === "its own" ? { preferCSSPageSize: true } : { format };
  const pdf = (await page.pdf(asked)).toString("latin1");
  return pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
}
