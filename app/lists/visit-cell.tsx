import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import { visitHref } from "#app/visit/visit-pages.ts";
import { visitInShort } from "#shared/words/next-visit.ts";

/** The visit of a line, as one phrase that leads to it; said where none is to come. */
export const VisitCell = ({ line: { visit, patient } }: { readonly line: ListLine }): ReactNode =>
  visit === null ? "none" : <a href={visitHref(patient.id, visit.id)}>{visitInShort(visit)}</a>;
