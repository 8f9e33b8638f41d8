import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import type { NameOrder } from "#shared/sheet/answers.ts";

export type Names = { readonly familyName: string; readonly givenName: string };

const parts = (cell: string): readonly string[] => cell.split(/\s+/).filter(Boolean);

/** Whether a name can be taken apart only by somebody who says which part stands first. */
export const nameIsUnclear = (cell: string): boolean => !cell.includes(",") && parts(cell).length > 1;

/**
 * A whole name in its two parts: at the comma, else by the order that was answered, where the outer word is the family's. One word
 * alone is refused (`name-one-word`), and no order answered (`name-order-unclear`).
 */
export function nameCell(cell: string, order: NameOrder | null): Parsed<Names> {
  const [family, given, ...more] = cell.split(",").map((part) => part.trim());
  if (given !== undefined && family && given && more.length === 0)
    return parsed({ familyName: family, givenName: given });
  const words = parts(cell.replaceAll(",", " "));
  const [first, last] = [words[0], words.at(-1)];
  if (first === undefined || last === undefined) return unread("text-missing", { what: "the name" });
  if (words.length === 1) return unread("name-one-word");
  if (order === null) return unread("name-order-unclear");
  return order === "family name first"
    ? parsed({ familyName: first, givenName: words.slice(1).join(" ") })
    : parsed({ familyName: last, givenName: words.slice(0, -1).join(" ") });
}
