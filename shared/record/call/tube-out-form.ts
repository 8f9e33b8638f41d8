import type { HowFarOut } from "#shared/call/tube-out.ts";
import { printDay } from "#shared/day/print-day.ts";
import { type Parsed, type Refusal, unread } from "#shared/errors/refusal.ts";
import { type Level, levels } from "#shared/protocol/levels.ts";
import { refusalsOfTime } from "#shared/record/call/after-told.ts";
import { HANDED_HINT, personIn, saysNobody } from "#shared/record/call/handed-to.ts";
import type { OutContext, TubeThatMayBeOut } from "#shared/record/call/out-context.ts";
import { type FlagTyped, rowTold } from "#shared/record/call/raise-flag-form.ts";
import {
  choiceField,
  choicesOf,
  factChoiceField,
  optionalChoiceField,
  yesNoField,
} from "#shared/record/field/choice-field.ts";
import { optionalLengthField } from "#shared/record/field/length-field.ts";
import { measureField } from "#shared/record/field/measure-field.ts";
import { filledField, lineField, noteField } from "#shared/record/field/text-field.ts";
import { whenField } from "#shared/record/field/when-field.ts";
import type { FieldSpec, Texts } from "#shared/record/field-spec.ts";
import { type EntryOf, form } from "#shared/record/form.ts";
import { saidOf } from "#shared/record/said-of.ts";
import { sourced } from "#shared/record/sourced.ts";
import { known, unknownFact } from "#shared/tube/certainty.ts";
import { numberedTitle } from "#shared/tube/name.ts";
import { feelings } from "#shared/tube/vocabulary.ts";

type TubeEntry = EntryOf<"fell out"> | EntryOf<"partly dislodged"> | EntryOf<"bled">;

/** What was told of a tube that is out: entries of the tube, what was found of the patient, and the red flag. */
export type OutTyped = {
  readonly tubeId: string;
  readonly ofTube: readonly TubeEntry[];
  readonly found: EntryOf<"clinical state noted"> | null;
  readonly flag: FlagTyped;
};

/** A tube by its number. One that is out by the record is not told out again. */
function tubeField({ tubes }: OutContext): FieldSpec<TubeThatMayBeOut> {
  const inside = tubes.filter(({ status }) => status === "in");
  const only = inside.length === 1 ? inside[0] : undefined;
  const { read: readNumber, ...shown } = choiceField(
    {
      label: "Which tube",
      what: "which tube it is",
      ...(only && { initial: String(only.number) }),
    },
    inside.map((tube) => ({ value: String(tube.number), label: numberedTitle(tube) })),
  );
  return {
    label: shown.label,
    ...(shown.initial !== undefined && { initial: shown.initial }),
    choices: shown.choices ?? [],
    read: (text): Parsed<TubeThatMayBeOut> => {
      const tube = tubes.find(({ number }) => String(number) === text.trim());
      if (tube !== undefined && tube.status !== "in") return unread("tube-out-already");
      const read = readNumber(text);
      const found = read.ok ? tubes.find(({ number }) => String(number) === read.value) : undefined;
      if (!read.ok) return read;
      return found === undefined ? unread("choice-unknown", { text }) : { ok: true, value: found };
    },
  };
}

const outs = [
  { value: "out", label: "Wholly out" },
  { value: "part out", label: "Part of the way out" },
] as const satisfies readonly { value: HowFarOut; label: string }[];

const isPart = ({ out }: Texts): boolean => out === "part out";

const slipped = (context: OutContext) => ({
  tube: tubeField(context),
  out: choiceField<HowFarOut>({ label: "How far", what: "how far it came" }, outs),
  when: whenField(
    {
      label: "Out since",
      hint: "7:40, yesterday 23:50, today; ? if unknown",
      initial: "",
    },
    context,
  ),
  whole: {
    ...yesNoField({ label: "It came out whole", hint: "no: a piece is missing" }),
    belongs: (texts: Texts) => !isPart(texts),
  },
  externalLength: {
    ...optionalLengthField({ label: "External length now, skin to hub, cm" }, "external length"),
    belongs: isPart,
  },
  oldTube: lineField({
    label: "Where is the old tube",
    hint: "kept, thrown away, at the hospital; ? if unknown",
  }),
});

const symptoms = {
  temperature: measureField("temperature", { label: "Temperature", hint: "37.2, or 99 F; ? if unknown" }),
  chills: yesNoField({ label: "Shaking chills" }),
  pain: measureField("pain", { label: "Pain", hint: "0 none, 10 the worst" }),
  coughOrBreathlessness: yesNoField({ label: "Cough or breathlessness" }),
  feels: factChoiceField({ label: "Feels" }, choicesOf(feelings)),
  bleeds: factChoiceField({ label: "Bleeding from the site" }, choicesOf(["none", "some", "heavy"])),
};

const told = (context: OutContext) => ({
  toldBy: lineField({ label: "Told by", hint: "blank: seen here" }),
  toldAt: whenField({ label: "Told on", initial: "now" }, context),
  level: {
    ...optionalChoiceField({ label: "How soon somebody is reached" }, choicesOf(levels), "By its row"),
    belongs: ({ tube }: Texts) =>
      context.tubes.some(({ number, flag }) => String(number) === tube && flag === null),
  },
  handedTo: filledField(
    { label: "Handed to", hint: HANDED_HINT },
    "the name of the person who has it now, or: nobody yet",
  ),
  handedAt: whenField({ label: "Handed over at", initial: "now" }, context),
  note: noteField({ label: "Note", detail: true }),
});

type Fields = ReturnType<typeof slipped> & typeof symptoms & ReturnType<typeof told>;
type ValueOf<S> = S extends FieldSpec<infer T> ? T : never;
type Values = { readonly [Name in keyof Fields]: ValueOf<Fields[Name]> };

/** The moment at which it came out lies behind its placement, and what follows behind its telling. */
function refusalsOf({ tube, when, level, toldAt, handedTo, handedAt }: Values): readonly Refusal[] {
  const refusals: Refusal[] = [];
  const { inSince, flag } = tube;
  if (inSince !== null && when.when.latest !== null && when.when.latest < inSince)
    refusals.push({ code: "out-before-placed", field: "when", args: { since: printDay(inSince) } });
  if (flag === null && level === undefined)
    refusals.push({ code: "text-missing", field: "level", args: { what: "how soon somebody is reached" } });
  return saysNobody(handedTo) ? refusals : [...refusals, ...refusalsOfTime("handedAt", handedAt, toldAt)];
}

type Of = Pick<Values, "out" | "when" | "toldAt" | "toldBy" | "note">;

const whoTold = ({ toldBy }: Pick<Of, "toldBy">) => (toldBy === null ? {} : { toldBy });

function tubeEntries(values: Values): readonly TubeEntry[] {
  const { out, when, whole, externalLength, oldTube, bleeds, toldAt, toldBy, note } = values;
  const told = toldBy !== null;
  const said = { ...(oldTube !== null && { oldTube }), ...whoTold(values), note };
  const slipped: TubeEntry =
    out === "out"
      ? { kind: "fell out", ...when, payload: { whole: sourced(whole ?? unknownFact, told), ...said } }
      : {
          kind: "partly dislodged",
          ...when,
          payload: { externalLength: sourced(externalLength ?? unknownFact, told), ...said },
        };
  const seen = bleeds === undefined ? undefined : known(bleeds);
  if (bleeds === undefined || seen === undefined || seen === "none") return [slipped];
  const heavy = sourced({ certainty: "confirmed", value: seen === "heavy" }, told);
  return [slipped, { kind: "bled", ...toldAt, payload: { heavy, ...whoTold(values), note: null } }];
}

function foundOf(values: Values): OutTyped["found"] {
  const { temperature, chills, pain, coughOrBreathlessness, feels, toldAt, toldBy } = values;
  const findings = { temperature, chills, pain, coughOrBreathlessness, feels };
  if (Object.values(findings).every((fact) => fact === undefined)) return null;
  const payload = { findings: saidOf(findings, toldBy !== null), ...whoTold(values), note: null };
  return { kind: "clinical state noted", ...toldAt, payload };
}

const inOwnWords = (
  out: HowFarOut,
  level: Level | undefined,
): Pick<FlagTyped, "row" | "level" | "says" | "untilReached"> => ({
  row: null,
  // The form refuses a red flag without a row and without a level.
  level: level ?? "on call now",
  says: out === "out" ? "tube out" : "tube partly out",
  untilReached: null,
});

function flagOf({ tube, out, level, toldAt, toldBy, handedTo, handedAt }: Values): FlagTyped {
  const to = personIn(handedTo);
  return {
    ...toldAt,
    ...(tube.flag === null ? inOwnWords(out, level) : rowTold(tube.flag)),
    of: { tube: tube.id, number: tube.number },
    toldBy,
    note: null,
    handed: to === null ? null : { ...handedAt, to },
  };
}

/** Record a tube that is out or partly out as it is told: which, since when, where it is, how the patient is, and who has it. */
export const tubeOutForm = form({
  fields: (context: OutContext): Fields => ({ ...slipped(context), ...symptoms, ...told(context) }),
  check: (values: Values) => refusalsOf(values),
  entry: (values: Values): OutTyped => ({
    tubeId: values.tube.id,
    ofTube: tubeEntries(values),
    found: foundOf(values),
    flag: flagOf(values),
  }),
});
