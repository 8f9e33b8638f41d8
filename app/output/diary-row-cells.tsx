import { type ReactNode, useState } from "react";
import type { Problem } from "#app/ui/error-summary.tsx";
import { Field } from "#app/ui/field.tsx";
import type { Texts } from "#shared/record/field-spec.ts";
import { cellName, cells, type DiaryCell, rareCells } from "#shared/record/output/diary-cells.ts";
import { besideCells, type DiaryRowFields } from "#shared/record/output/diary-form.ts";
import styles from "./diary.module.css";

type DiaryRowCellsProps = {
  readonly row: DiaryRowFields;
  /** With the cells that most diaries do without. */
  readonly withRare: boolean;
  /** What is asked of its cells by what is logged and by the other rows, by name. */
  readonly asked: Readonly<Partial<Record<string, string>>>;
  readonly opening: Texts;
  readonly problems: readonly Problem[];
  readonly typed: (field: string) => void;
};

const labels: Readonly<Record<DiaryCell, string>> = {
  when: "emptied at",
  drained: "drained, mL",
  flush: "flush given, mL",
  characters: "character",
  leak: "leak",
  otherIn: "other fluid in",
};

const isRare = (cell: DiaryCell): boolean => rareCells.some((rare) => rare === cell);

/** One emptying of a diary. A cell speaks of what is to mend once it has been left; a row in which nothing stands says nothing. */
export function DiaryRowCells(props: DiaryRowCellsProps): ReactNode {
  const { row, withRare, asked, opening, problems, typed } = props;
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const blank = cells.every((cell) => row.texts[cell].trim() === "");
  const beside = besideCells(row);
  return (
    <fieldset className={styles.row} aria-label={`Row ${row.row}`}>
      <span className={styles.number} aria-hidden="true">
        {row.row}
      </span>
      {cells.map((cell) => {
        if (isRare(cell) && !withRare) return null;
        const name = cellName(cell, row.row);
        const reading = blank ? {} : beside[cell];
        const refused = problems.find(({ field }) => field === name)?.sentence;
        const isLeft = left.has(cell) && row.texts[cell] !== "";
        return (
          <Field
            key={cell}
            stacked
            name={name}
            label={`Row ${row.row}: ${labels[cell]}`}
            echo={reading.echo}
            doubt={[reading.doubt, asked[name]].filter(Boolean).join(" ") || undefined}
            problem={refused ?? (isLeft ? reading.problem : undefined)}
            control={{
              defaultValue: opening[name],
              onInput: () => typed(name),
              onBlur: () => setLeft((before) => new Set([...before, cell])),
            }}
          />
        );
      })}
    </fieldset>
  );
}
