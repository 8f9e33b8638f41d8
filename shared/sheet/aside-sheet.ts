import { unguarded } from "#shared/sheet/guard.ts";
import { heading } from "#shared/sheet/heading.ts";
import type { Sheet } from "#shared/sheet/sheet.ts";

/** What a file of rows set aside has behind the list's own columns. */
export const asideHeadings = ["row in the list", "what to mend"] as const;

/**
 * A file of rows set aside, brought in again, as the list that it came from: without the columns that were put behind, and each cell as
 * it stood there, so that a formula which nobody mended is one still. Any other sheet is left as it is.
 */
export function withoutAside(sheet: Sheet): Sheet {
  const added = asideHeadings.map((own) => sheet.headings.findIndex((text) => heading(text) === own));
  if (added.includes(-1)) return sheet;
  const own = <T>(cells: readonly T[]): T[] => cells.filter((_, place) => !added.includes(place));
  return {
    ...sheet,
    headings: own(sheet.headings).map(unguarded),
    rows: sheet.rows.map(({ row, cells }) => ({ row, cells: own(cells).map(unguarded) })),
  };
}
