import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import styles from "./cells.module.css";

type NamedTube = Pick<NonNullable<ListLine["tube"]>, "id" | "name">;

type TubeCellProps = {
  readonly tube: NamedTube | null;
  /** Where the line is of no one tube: those that it is of all the same, as a visit for several is. */
  readonly several?: readonly NamedTube[] | undefined;
};

/** A tube in a list: its name, side first, which leads to its page; size and hold stand behind. */
export function TubeCell({ tube, several = [] }: TubeCellProps): ReactNode {
  const tubes = tube === null ? several : [tube];
  if (tubes.length === 0) return "the whole record";
  return tubes.map((one) => <Tube key={one.id} tube={one} />);
}

function Tube({ tube }: { readonly tube: NamedTube }): ReactNode {
  const comma = tube.name.indexOf(", ");
  const title = comma < 0 ? tube.name : tube.name.slice(0, comma);
  return (
    <>
      <a className={styles.name} href={`/tubes/${tube.id}`}>
        {title}
      </a>{" "}
      <span className={styles.detail}>{tube.name.slice(title.length + 2)}</span>
    </>
  );
}
