import type { Database } from "#db/sqlite.ts";
import { type CsvTable, csvLines } from "#server/export/csv/csv-table.ts";
import { type AskingFigures, figures } from "#server/figures/figures.ts";
import { type FigureLine, figureLines } from "#shared/words/figures.ts";

const columns: CsvTable<FigureLine>["columns"] = {
  table: ({ table }) => table,
  figure: ({ word }) => word,
  count: ({ count }) => count ?? "cannot tell",
  unit: ({ unit }) => unit,
  "of all": ({ of }) => of ?? "",
};

/** The figures of the last days as a file; its name says of which days. */
export function figuresFile(
  db: Database,
  asked: AskingFigures,
): { readonly name: string; readonly text: string } {
  const view = figures(db, asked);
  return {
    name: `figures-${view.span.from}-to-${view.span.to}.csv`,
    text: [...csvLines({ columns, rows: () => figureLines(view) }, db)].join(""),
  };
}
