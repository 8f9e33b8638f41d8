import type { ReactNode } from "react";
import styles from "#app/rooms/rooms.module.css";
import type { Column } from "#app/ui/data-table.tsx";
import type { Room } from "#shared/visit/room.ts";
import { hoursLines } from "#shared/words/hours.ts";
import { canWords, reserveWords } from "#shared/words/rooms.ts";

const plain: readonly Column<Room>[] = [
  { head: "Room", cell: ({ name }) => <bdi>{name}</bdi> },
  { head: "What it can do", cell: ({ can }) => canWords(can) },
  { head: "Staffed", cell: ({ hours }) => hoursLines(hours).map((line) => <p key={line}>{line}</p>) },
  { head: "Kept free for urgent visits", cell: ({ reserve }) => reserveWords(reserve) },
];

/** The columns of the rooms, and the same with what may be done to each. */
export const roomColumns = {
  plain,
  withActs: [...plain, { head: "Change", acts: true, cell: acts }] satisfies readonly Column<Room>[],
};

function acts({ id, name }: Room): ReactNode {
  return (
    <span className={styles.acts}>
      <a href={`/rooms/${id}`} aria-label={`Change ${name}`}>
        Change
      </a>
      <a href={`/rooms/${id}/take-away`} aria-label={`Take away ${name}`}>
        Take away
      </a>
    </span>
  );
}
