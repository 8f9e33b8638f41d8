import type { ReactNode } from "react";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { titlesOf } from "#shared/tube/name.ts";
import type { TubeState } from "#shared/tube/state.ts";

type LinksProps = {
  readonly word: string;
  readonly of: readonly TubeState[];
  readonly titles: ReadonlyMap<string, string>;
  readonly href: (tubeId: string) => string;
};

function Links({ word, of, titles, href }: LinksProps): ReactNode {
  if (of.length === 0) return null;
  return (
    <>
      {word}:{" "}
      {of.map(({ id }) => (
        <span key={id}>
          <a href={href(id)}>{titles.get(id)}</a>{" "}
        </span>
      ))}
    </>
  );
}

/** Output is entered by the same form as everywhere, and the card of a tube prints; what is typed of the call is kept meanwhile. */
export function CallLinks({ tubes }: { readonly tubes: readonly TubeState[] }): ReactNode {
  const standing = tubes.filter(({ status }) => status === "in");
  const titles = titlesOf(tubes);
  if (standing.length === 0) return null;
  return (
    <p data-screen-only>
      <Links
        word="Enter output"
        of={standing.filter(({ kind }) => kindOf(kind).output !== null)}
        titles={titles}
        href={(id) => `/tubes/${id}/record/reading`}
      />
      <Links word="Tube card" of={standing} titles={titles} href={(id) => `/tubes/${id}/card`} />
    </p>
  );
}
