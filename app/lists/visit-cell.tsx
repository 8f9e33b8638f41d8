import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import { visitInShort } from "#shared/words/next-visit.ts";

/** The visit of a line, as one phrase; said where none is to come. */
export const VisitCell = ({ visit }: Pick<ListLine, "visit">): ReactNode =>
  visit === null ? "none" : visitInShort(visit);
