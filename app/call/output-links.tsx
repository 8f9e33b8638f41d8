import type { ReactNode } from "react";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { titlesOf } from "#shared/tube/name.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Output is entered by the same form as everywhere; what is typed of the call is kept meanwhile. */
export function OutputLinks({ tubes }: { readonly tubes: readonly TubeState[] }): ReactNode {
  const measured = tubes.filter(({ status, kind }) => status === "in" && kindOf(kind).output !== null);
  const titles = titlesOf(tubes);
  if (measured.length === 0) return null;
  return (
    <p data-screen-only>
      Enter output:{" "}
      {measured.map(({ id }) => (
        <span key={id}>
          <a href={`/tubes/${id}/record/reading`}>{titles.get(id)}</a>{" "}
        </span>
      ))}
    </p>
  );
}
