import type { ReactNode } from "react";
import { DropOrder } from "#app/lists/drop-order.tsx";
import type { ListLine, WorkListPage } from "#app/lists/list-line.ts";
import { OrderButtons } from "#app/lists/order-buttons.tsx";
import { VisitCell } from "#app/lists/visit-cell.tsx";
import { fullNameOf } from "#app/patients/identity-of.ts";
import { stepColumns } from "#app/today/steps-table.tsx";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import type { Person } from "#shared/access/person.ts";
import type { WorkList } from "#shared/step/work-list.ts";
import { listName } from "#shared/words/work-lists.ts";
import styles from "./work-list.module.css";

type WorkTableProps = Pick<WorkListPage, "today" | "placed" | "lines"> & {
  readonly list: WorkList;
  readonly person: Person;
  readonly marksExample: boolean;
  /** Said where no line stands here. */
  readonly none: string;
};

const whose = ({ patient, tube }: ListLine): string =>
  [fullNameOf(patient), tube?.name].filter((word) => word !== undefined).join(", ");

/** Lines of one list: what somebody put in an order of their own, and the others behind it in the list's. */
export function WorkTable({ list, placed, lines, none, ...shown }: WorkTableProps): ReactNode {
  const [what, ...rest] = stepColumns(shown);
  const order = placed.map(({ step }) => step.id);
  const visit: Column<ListLine> = { head: "Visit", cell: (line) => <VisitCell line={line} /> };
  const put: Column<ListLine> = {
    head: "Your order",
    acts: true,
    cell: (line) => {
      const found = order.indexOf(line.step.id);
      const at = found < 0 ? null : found;
      const [above, below] = at === null ? [] : [order[at - 1], order[at + 1]];
      return <OrderButtons list={list} stepId={line.step.id} of={whose(line)} {...{ at, above, below }} />;
    },
  };
  const columns = [what, ...rest.slice(0, 3), visit, ...rest.slice(3), put].filter(
    (column) => column !== undefined,
  );
  const table = (caption: string, rows: readonly ListLine[]): ReactNode => (
    <DataTable caption={caption} columns={columns} rows={rows} keyOf={({ step }) => step.id} none={none} />
  );
  if (placed.length === 0) return <div className={styles.tables}>{table(listName(list), lines)}</div>;
  return (
    <div className={styles.tables}>
      <p className={styles.said}>
        {placed.length === 1
          ? "The line that you put first stands first."
          : `The ${placed.length} lines that you put first stand first, in your order.`}{" "}
        Only you see it so. <DropOrder list={list} />
      </p>
      {table("In your order", placed)}
      {lines.length > 0 && table("Then in the list's own order", lines)}
    </div>
  );
}
