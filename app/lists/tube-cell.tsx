import type { ReactNode } from "react";
import type { ListLine } from "#app/lists/list-line.ts";
import styles from "./cells.module.css";

type NamedTube = Pick<NonNullable<ListLine["tube"]>, "id" | "name">;

/** A tube in a list: its name, side first, which leads to its page; size and hold stand behind. */
export function TubeCell({ tube }: { readonly tube: NamedTube | null }): ReactNode {
  if (tube === null) return "the whole record";
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
