import type { Refusal } from "#shared/errors/refusal.ts";
import { choicesOf, optionalChoiceField, yesNoField } from "#shared/record/field/choice-field.ts";
import type { TypedKind } from "#shared/record/field/kind-field.ts";
import { lineField, noteField } from "#shared/record/field/text-field.ts";
import type { FormContext } from "#shared/record/form.ts";
import { sourced } from "#shared/record/sourced.ts";
import { factFields, factsOf, type TypedFacts } from "#shared/record/tube/fact-fields.ts";
import { insideRefusals, sizeRefusals } from "#shared/record/tube/from-shelf.ts";
import { type Fact, unknownFact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { Opening, OperatorPlan } from "#shared/tube/payloads.ts";
import { type Mode, modes, type Role, roles, type Side } from "#shared/tube/vocabulary.ts";
import { modeWords } from "#shared/words/modes.ts";
import { roleWords } from "#shared/words/tube-roles.ts";

/** What may be said of a tube when its record opens, beside the five fields. */
export const openingDetails = (context: Pick<FormContext, "shelf">) => ({
  ...factFields(context),
  cavity: lineField({ label: "Cavity", hint: "where it lies, as left subphrenic", detail: true }),
  organ: lineField({ label: "Organ", hint: "blank: the usual one for the kind", detail: true }),
  route: lineField({ label: "Route", hint: "transhepatic, through the flank", detail: true }),
  indication: lineField({ label: "Indication", detail: true }),
  cancerObstruction: yesNoField({ label: "Obstruction by cancer", detail: true }),
  role: optionalChoiceField(
    { label: "Role", detail: true },
    choicesOf(roles, roleWords),
    "Usual for this kind",
  ),
  mode: optionalChoiceField(
    { label: "Mode", detail: true },
    choicesOf(modes, modeWords),
    "Usual for this kind",
  ),
  note: noteField({ label: "Note", detail: true }),
});

type TypedOpening = TypedFacts & {
  readonly kind: TypedKind;
  readonly side: Fact<Side> | undefined;
  readonly plan: OperatorPlan | null;
  readonly cavity: string | null;
  readonly organ: string | null;
  readonly route: string | null;
  readonly indication: string | null;
  readonly cancerObstruction: Fact<boolean> | undefined;
  readonly role: Role | undefined;
  readonly mode: Mode | undefined;
  readonly note: string | null;
};

type Sided = Pick<TypedOpening, "kind" | "side">;

/** The side from its own field or beside the kind; two that differ, or none where the kind needs one, are refused. */
function sideRefusals({ kind, side }: Sided): readonly Refusal[] {
  const typed = side !== undefined && side.certainty !== "unknown" ? side.value : null;
  if (kind.side !== null && side !== undefined && typed !== kind.side)
    return [{ code: "side-differs", field: "side", args: { kind: kind.side, side: typed ?? "unknown" } }];
  const none = side === undefined && kind.side === null;
  const unsided = (typed ?? kind.side) === "not sided";
  return kindOf(kind.kind).sided && (none || unsided) ? [{ code: "side-missing", field: "side" }] : [];
}

type Setting = Pick<TypedOpening, "kind" | "role" | "mode">;

/** Role and mode, typed or usual for the kind; null where the kind has no usual one and nobody said. */
const settingOf = ({ kind, role, mode }: Setting) => ({
  role: role ?? kindOf(kind.kind).role,
  mode: mode ?? kindOf(kind.kind).mode,
});

/** A kind without a usual role or mode has them asked: every rule hangs on them, so they are never guessed. */
function settingRefusals(typed: Setting): readonly Refusal[] {
  const { role, mode } = settingOf(typed);
  const refusals: Refusal[] = [];
  if (role === null) refusals.push({ code: "role-missing", field: "role" });
  if (mode === null) refusals.push({ code: "mode-missing", field: "mode" });
  return refusals;
}

/** What a record that opens must say beside what its fields read. */
export const openingRefusals = (typed: Setting & Sided & TypedFacts): readonly Refusal[] => [
  ...sizeRefusals(typed),
  ...insideRefusals(typed),
  ...sideRefusals(typed),
  ...settingRefusals(typed),
];

const sideOf = ({ kind, side }: Sided): Fact<Side> => {
  if (side !== undefined) return side;
  return kind.side === null ? unknownFact : { certainty: "confirmed", value: kind.side };
};

/**
 * What a record opens with. What another place says is reported; what is blank is unknown, or usual for the kind. Comes after
 * `openingRefusals` found nothing to mend.
 */
export function openingOf(
  typed: TypedOpening,
  { number, toldByOthers }: { readonly number: number; readonly toldByOthers: boolean },
): Opening {
  const { kind } = typed.kind;
  const { role, mode } = settingOf(typed);
  if (role === null || mode === null) throw new Error(`"${kind}" opens without a role or a mode`);
  return {
    kind,
    role,
    mode,
    number,
    side: sourced(sideOf(typed), toldByOthers),
    organ: typed.organ ?? kindOf(kind).organ,
    route: typed.route,
    cavity: typed.cavity,
    indication: typed.indication,
    cancerObstruction: sourced(typed.cancerObstruction ?? unknownFact, toldByOthers),
    facts: factsOf(typed, { toldByOthers, blank: "unknown" }),
    plan: typed.plan,
    ...(typed.note !== null && { note: typed.note }),
  };
}
