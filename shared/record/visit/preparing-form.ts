import type { PreparedTyped } from "#shared/record/field/prepared-field.ts";
import { preparedField } from "#shared/record/field/prepared-field.ts";
import type { FieldSpecs } from "#shared/record/field-spec.ts";
import { form } from "#shared/record/form.ts";
import type { PrerequisiteThing } from "#shared/visit/prerequisite-things.ts";
import { thingLabels } from "#shared/words/prerequisites.ts";

/** The things that the rows ask for, in their order, each with what is shown beside it. */
export type PreparingContext = {
  readonly things: readonly { readonly thing: PrerequisiteThing; readonly hint: string }[];
};

type Fields = FieldSpecs<Record<string, PreparedTyped>>;

/** The name of a thing's field: "dialysis-or-chemotherapy". */
export const fieldOf = (thing: PrerequisiteThing): string => thing.replaceAll(" ", "-");

const thingFields = ({ things }: PreparingContext): Fields =>
  Object.fromEntries(
    things.map(({ thing, hint }) => [
      fieldOf(thing),
      preparedField({ label: thingLabels[thing], hint }, { needsWords: thing === "blood thinners" }),
    ]),
  );

/** How the things stand that are to be settled before a visit: what is left blank stands as it did. */
export const preparingForm = form({
  fields: thingFields,
  check: (values, { things }) =>
    things.some(({ thing }) => (values[fieldOf(thing)] ?? null) !== null)
      ? []
      : [{ code: "nothing-said", field: things[0] && fieldOf(things[0].thing) }],
  entry: (values, { things }) =>
    things.flatMap(({ thing }) => {
      const typed = values[fieldOf(thing)] ?? null;
      return typed === null ? [] : [{ thing, ...typed }];
    }),
});
