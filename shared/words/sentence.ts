import type { Fact } from "#shared/tube/certainty.ts";
import type { EventKind, Payload } from "#shared/tube/payloads.ts";
import { toldFact } from "#shared/words/facts.ts";

/** Names a member of staff by id. */
export type NameOf = (staffId: string) => string;
export type Tell<K extends EventKind> = (payload: Payload<K>, nameOf: NameOf) => string;

export type Part = string | null | undefined | false;

/** What somebody typed, closed with a full stop where they put no mark of their own, so that it does not run into what follows. */
const closed = (typed: string): string =>
  /[.!?\u2026]["')\]\u201d\u2019]?$/.test(typed) ? typed : `${typed}.`;

/** "Exchanged: 8 F, takes 0.035 in. Note." A head alone ends in its full stop. */
export function sentence(head: string, parts: readonly Part[], note?: string | null): string {
  const told = parts.filter((part): part is string => typeof part === "string" && part !== "");
  const line = told.length === 0 ? `${head}.` : `${head}: ${told.join(", ")}.`;
  return note === null || note === undefined ? line : `${line} ${closed(note)}`;
}

export const yesNo = (fact: Fact<boolean>, [yes, no, unknown]: readonly [string, string, string]): string =>
  fact.certainty === "unknown"
    ? unknown
    : toldFact(fact, { what: unknown, print: (value) => (value ? yes : no), telling: "marked" });

export const wholeWords = ["whole", "not whole: a piece is left", "unknown whether whole"] as const;

export const toldBy = (who: string | null | undefined): Part => (who ? `told by ${who}` : null);
