import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import { Now } from "#app/ui/now.tsx";
import { visitHref } from "#app/visit/visit-pages.ts";
import { visitInShort } from "#shared/words/next-visit.ts";

/** The visit of a line, as one phrase that leads to it; said where none is to come, and where it comes too late for the tube's own date. */
export function VisitCell({ line: { visit, patient, step } }: { readonly line: ListLine }): ReactNode {
  if (visit === null) return "none";
  const isLate = step.latest !== null && visit.on > step.latest;
  return (
    <>
      <a href={visitHref(patient.id, visit.id)}>{visitInShort(visit)}</a>
      {isLate && (
        <>
          {" "}
          <Now>past the latest date</Now>
        </>
      )}
    </>
  );
}
