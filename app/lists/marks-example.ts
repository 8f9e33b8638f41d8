import type { ListLine } from "#app/lists/list-line.ts";
import type { Frame } from "#app/ui/page-frame.tsx";

/**
 * Whether a list says EXAMPLE line by line: where the head of the page does not say it of every line, since the newest table is approved, or
 * where some lines are by an approved row.
 */
export const marksExample = (
  { isExample }: Pick<Frame, "isExample">,
  lines: readonly Pick<ListLine, "row">[],
): boolean => !isExample || lines.some(({ row }) => row === "approved");
