import { type ReactNode, useState } from "react";
import { ThingField } from "#app/sizes/thing-field.tsx";
import type { Change, Row } from "#app/sizes/use-things.ts";
import { Field } from "#app/ui/field.tsx";
import type { Refusal } from "#shared/errors/refusal.ts";
import { type CoaxialSort, coaxialSorts } from "#shared/fit/coaxial.ts";
import { choicesOf } from "#shared/record/field/choice-field.ts";
import { namesOf, type Texts } from "#shared/record/field-spec.ts";
import { chainFields } from "#shared/record/shelf/read-chain.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { typeTexts } from "#shared/shelf/type-texts.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import styles from "./sizes.module.css";

type ThingRowProps = {
  readonly row: Row;
  /** Its place from the innermost, 1, and how many there are. */
  readonly place: number;
  readonly of: number;
  readonly refusals: readonly Refusal[];
  /** What the clinic has on its shelf, to fill the row from. */
  readonly shelf: readonly ShelfType[];
  readonly change: (change: Change) => void;
};

/** The id of a control of a row, as the field makes it. */
export const controlName = (key: number, field: string): string => `${key}-${field}`;

const isSort = (text: string): text is CoaxialSort => coaxialSorts.some((sort) => sort === text);

const legendOf = ({ row, place, of }: Pick<ThingRowProps, "row" | "place" | "of">): string => {
  const where = place === 1 ? ", innermost" : place === of ? ", outermost" : "";
  return `${place}${where}: ${row.sort}`;
};

type FieldName = keyof typeof chainFields;
/** What most chains are asked without. */
const rarely: readonly FieldName[] = ["endHole", "name", "tolerance", "certainty"];
const isFolded = (field: FieldName): boolean => rarely.includes(field);
/** Something stands there that an empty row has not. */
const says = (texts: Texts, field: FieldName): boolean =>
  !["", chainFields[field].initial ?? ""].includes(texts[field] ?? "");
const shown = namesOf(chainFields).filter((field) => !isFolded(field));
const folded = namesOf(chainFields).filter(isFolded);

/** One thing of the chain: what it is, its fields, and the buttons that move it or take it away. */
export function ThingRow(props: ThingRowProps): ReactNode {
  const { row, place, of, refusals, change } = props;
  const { key, sort, texts } = row;
  const toMend = (field: string): string | undefined => {
    const refusal = refusals.find((each) => each.field === field);
    return refusal === undefined ? undefined : refusalSentence(refusal);
  };
  const asked = { ...texts, sort };
  const cell = (field: FieldName): ReactNode => (
    <ThingField
      key={field}
      {...{ field, fields: chainFields, texts: asked }}
      name={controlName(key, field)}
      toMend={toMend(field)}
      typed={(text) => change({ do: "type", key, field, text })}
    />
  );
  const [isUsed] = useState(folded.some((field) => says(texts, field)));
  return (
    <fieldset className={styles.thing}>
      <legend>{legendOf(props)}</legend>
      <div className={styles.cells}>
        <Field
          stacked
          name={controlName(key, "sort")}
          label="Sort"
          choices={choicesOf(coaxialSorts)}
          problem={toMend("sort")}
          control={{
            defaultValue: sort,
            onChange: ({ currentTarget: { value } }) =>
              isSort(value) && change({ do: "choose sort", key, sort: value }),
          }}
        />
        <FromShelf {...props} />
        {shown.map(cell)}
      </div>
      <details className={styles.more} open={isUsed || undefined}>
        <summary>More that is known</summary>
        <div className={styles.cells}>{folded.map(cell)}</div>
      </details>
      <Moves {...{ rowKey: key, place, of, change }} />
    </fieldset>
  );
}

/** Fills the row with what the shelf says of a type; not shown where the shelf has none of the sort. */
function FromShelf({ row: { key, sort }, shelf, change }: ThingRowProps): ReactNode {
  const types = shelf.filter((type) => type.sort === sort);
  if (types.length === 0) return null;
  return (
    <Field
      stacked
      name={controlName(key, "shelf")}
      label="From the shelf"
      choices={[{ value: "", label: "Choose" }, ...types.map(({ id, name }) => ({ value: id, label: name }))]}
      control={{
        onChange: ({ currentTarget: { value } }) => {
          const type = types.find(({ id }) => id === value);
          if (type !== undefined) change({ do: "fill", key, thing: { sort, texts: typeTexts(type) } });
        },
      }}
    />
  );
}

type MovesProps = Pick<ThingRowProps, "place" | "of" | "change"> & { readonly rowKey: number };

/** What cannot be done stays in its place, so that the keyboard's focus does too. */
function Moves({ rowKey: key, place, of, change }: MovesProps): ReactNode {
  const button = (word: string, isOff: boolean, asks: Change): ReactNode => (
    <button
      type="button"
      id={controlName(key, asks.do === "move" ? `move${asks.by}` : asks.do)}
      aria-disabled={isOff}
      onClick={() => !isOff && change(asks)}
    >
      {word}
    </button>
  );
  return (
    <div className={styles.moves} data-screen-only>
      {button("Move in", place === 1, { do: "move", key, by: -1 })}
      {button("Move out", place === of, { do: "move", key, by: 1 })}
      {button("Remove", of === 1, { do: "remove", key })}
    </div>
  );
}
