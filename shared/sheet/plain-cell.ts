import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { unguarded } from "#shared/sheet/guard.ts";

/** `="004711"`: how a spreadsheet is made to keep leading zeros. */
const QUOTED = /^="([^"]*)"$/;
/** An equals sign, or a sign before a cell or a function; "+ve swab" is a note. */
const FORMULA = /^(?:=|[@+-]\s*(?:\$?[A-Z]{1,3}\$?\d|[A-Z]+\(|\())/;
const BROKEN = /^(?:#(?:REF|N\/A|VALUE|NAME|DIV\/0|NUM|NULL)[!?]?|#{3,})$/i;
const SAYS_UNKNOWN = /^(?:\?+|unknown|unk|n\/?k|not known|tbc|-+|–|—|n\/?a)\.?$/i;

/** Whether a cell says in so many words that nobody knows. */
export const saysUnknown = (cell: string): boolean => SAYS_UNKNOWN.test(cell);

/**
 * A cell as a person reads it: no blanks round it, no marks that only a spreadsheet needs; what an export guarded is text. Refuses
 * what is no value but its recipe (`cell-formula`) or the spreadsheet's own complaint (`cell-broken`).
 */
export function plainCell(cell: string): Parsed<string> {
  const text = cell.replace(/[\u00a0\u200b\ufeff]/g, " ").trim();
  const quoted = QUOTED.exec(text)?.[1];
  if (quoted !== undefined) return parsed(quoted.trim());
  const bare = unguarded(text);
  if (bare !== text) return parsed(bare);
  if (FORMULA.test(text)) return unread("cell-formula", { text: text.slice(0, 40) });
  if (BROKEN.test(text)) return unread("cell-broken", { text });
  return parsed(text);
}
