import type { ReactNode } from "react";
import { DataTable } from "#app/ui/data-table.tsx";
import { type FigureLine, shareWords } from "#shared/words/figures.ts";
import styles from "./figures.module.css";

type FiguresTableProps = {
  readonly caption: FigureLine["table"];
  /** How many are counted in all: how many lines there are says nothing. */
  readonly count: string;
  readonly lines: readonly FigureLine[];
  readonly days: number;
};

function hrefOf(opens: FigureLine["opens"], days: number): string | null {
  if (opens === null) return null;
  if (typeof opens === "object") return `/exchanges?${new URLSearchParams({ kind: opens.kind })}`;
  if (opens === "undated" || opens === "past-latest") return `/lists/${opens}`;
  return `/figures/${encodeURIComponent(opens)}?days=${days}`;
}

/** One table with its picture: a bar a line, as long as its count against the most of the same unit. Figures stand beside it as text. */
export function FiguresTable({ caption, count: all, lines, days }: FiguresTableProps): ReactNode {
  const most = (unit: string): number =>
    Math.max(1, ...lines.filter((line) => line.unit === unit).map(({ count }) => count ?? 0));
  return (
    <DataTable
      caption={caption}
      count={all}
      columns={[
        {
          head: "Figure",
          cell: ({ word, opens }) => {
            const href = hrefOf(opens, days);
            return href === null ? word : <a href={href}>{word}</a>;
          },
        },
        { head: "Count", figure: true, cell: ({ count }) => count ?? "cannot tell" },
        { head: "Unit", cell: ({ unit }) => unit },
        { head: "Of all", cell: shareWords },
        {
          head: "Picture",
          cell: ({ count, unit, word }) => (
            <Bar says={`${word}: ${count ?? "cannot tell"} ${unit}`} share={(count ?? 0) / most(unit)} />
          ),
        },
      ]}
      rows={lines}
      keyOf={({ word }) => word}
      none="Nothing is in place by this record."
    />
  );
}

function Bar({ says, share }: { readonly says: string; readonly share: number }): ReactNode {
  return (
    <svg className={styles.bar} role="img" aria-label={says} preserveAspectRatio="none" viewBox="0 0 100 10">
      <title>{says}</title>
      <rect x="0" y="2" width={Math.max(share * 100, share > 0 ? 1 : 0)} height="6" />
    </svg>
  );
}
