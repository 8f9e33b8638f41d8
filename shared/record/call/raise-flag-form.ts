import type { WhenAt } from "#shared/day/read-when-at.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { type Level, levels } from "#shared/protocol/levels.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import { refusalsOfTime } from "#shared/record/call/after-told.ts";
import type { RaisingContext } from "#shared/record/call/flag-context.ts";
import { HANDED_HINT, personIn, saysNobody } from "#shared/record/call/handed-to.ts";
import { choicesOf, optionalChoiceField } from "#shared/record/field/choice-field.ts";
import { filledField, lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { form, type NumberedTube } from "#shared/record/form.ts";
import { numberedTitle } from "#shared/tube/name.ts";

/** A red flag as it was typed, with whom it was handed to; null: nobody has it. */
export type FlagTyped = WhenAt & {
  readonly row: string | null;
  readonly level: Level;
  readonly says: string;
  readonly untilReached: string | null;
  readonly of: { readonly tube: string; readonly number: number } | null;
  readonly toldBy: string | null;
  readonly note: string | null;
  readonly handed: (WhenAt & { readonly to: string }) | null;
};

const isIn = ({ status }: NumberedTube): boolean => status === "in";
const inOwnWords = ({ row }: Texts): boolean => (row ?? "") === "";

const rowField = ({ rows }: RaisingContext) =>
  optionalChoiceField(
    { label: "What was told", hint: "by the clinic's rows" },
    rows.map(({ id, level, says }) => ({ value: id, label: `${says} (${level})` })),
    "None of these rows: own words below",
  );

const tubeField = ({ tubes }: RaisingContext) =>
  optionalChoiceField(
    { label: "Of which tube" },
    tubes.filter(isIn).map((tube) => ({ value: String(tube.number), label: numberedTitle(tube) })),
    "Of the patient",
  );

type Said = {
  readonly row: string | undefined;
  readonly says: string | null;
  readonly level: Level | undefined;
};

/** A row has its own words and level; what no row says needs both. */
function refusalsOfWords({ row, says, level }: Said): readonly Refusal[] {
  if (row !== undefined)
    return says === null && level === undefined ? [] : [{ code: "flag-words-beside-row", field: "row" }];
  const missing: Refusal[] = [];
  if (says === null) missing.push({ code: "text-missing", field: "says", args: { what: "what was told" } });
  if (level === undefined)
    missing.push({ code: "text-missing", field: "level", args: { what: "how soon somebody is reached" } });
  return missing;
}

type Told = Pick<FlagTyped, "row" | "level" | "says" | "untilReached">;

function toldIn({ row, says, level }: Said, rows: RaisingContext["rows"]): Told {
  const found = rows.find(({ id }) => id === row);
  // The form refuses own words without a level before they are read here.
  if (found === undefined)
    return { row: null, level: level ?? "same day", says: says ?? "", untilReached: null };
  return rowTold(found);
}

/** What is copied from a row, so that it stands as it was told when the table changes. */
export const rowTold = ({
  id,
  level,
  says,
  untilReached,
}: Pick<RedFlagRow, "id" | "level" | "says" | "untilReached">): Told => ({
  row: id,
  level,
  says,
  untilReached,
});

/** Raise a red flag of the patient or of one tube, and say at once whom it was handed to. */
export const raiseFlagForm = form({
  fields: (context: RaisingContext) => ({
    row: rowField(context),
    says: { ...lineField({ label: "In own words", hint: "where no row fits" }), belongs: inOwnWords },
    level: {
      ...optionalChoiceField({ label: "How soon somebody is reached" }, choicesOf(levels), "By its row"),
      belongs: inOwnWords,
    },
    of: tubeField(context),
    toldBy: lineField({ label: "Told by", hint: "blank: seen here" }),
    when: whenField({ label: "Told on", initial: "now" }, context),
    handedTo: filledField(
      { label: "Handed to", hint: HANDED_HINT },
      "the name of the person who has it now, or: nobody yet",
    ),
    handedAt: whenField({ label: "Handed over at", initial: "now" }, context),
    note: noteField({ label: "Note", detail: true }),
  }),
  check: ({ row, says, level, when, handedTo, handedAt }) => [
    ...refusalsOfWords({ row, says, level }),
    ...(saysNobody(handedTo) ? [] : refusalsOfTime("handedAt", handedAt, when)),
  ],
  entry: ({ row, says, level, of, toldBy, when, handedTo, handedAt, note }, context): FlagTyped => {
    const tube = context.tubes.find(({ number, status }) => status === "in" && String(number) === of);
    const to = personIn(handedTo);
    return {
      ...when,
      ...toldIn({ row, says, level }, context.rows),
      of: tube === undefined ? null : { tube: tube.id, number: tube.number },
      toldBy,
      note,
      handed: to === null ? null : { ...handedAt, to },
    };
  },
});
