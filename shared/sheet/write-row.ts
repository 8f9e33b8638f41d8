import { isoWhen } from "#shared/day/iso-when.ts";

import { patientTexts } from "#shared/record/patient/patient-texts.ts";
import type { SheetField } from "#shared/sheet/sheet-fields.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { printExactly } from "#shared/size/print-exactly.ts";
import type { Fact } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { printPlan } from "#shared/words/plan.ts";

/** What a written list says in its columns: a name in its two parts, and a plan in words with its act and its day. */
export type WrittenField = Exclude<SheetField, "wholeName" | "exchangeBy" | "removeBy" | "reviewBy">;

type Cells<F extends SheetField> = Readonly<Record<F, string>>;

/** A patient as their page has them. */
export type WrittenPatient = Parameters<typeof patientTexts>[0];

const UNKNOWN = "unknown";
const orUnknown = (text: string | undefined): string => text || UNKNOWN;

function patientCells(details: WrittenPatient) {
  const texts = patientTexts(details);
  const text = (field: string): string => texts[field] ?? "";
  return {
    familyName: text("familyName"),
    givenName: text("givenName"),
    birthOn: details.birthOn ?? UNKNOWN,
    number: text("number"),
    issuer: text("issuer"),
    secondNumber: text("secondNumber"),
    secondIssuer: text("secondIssuer"),
    telephones: orUnknown(text("telephones")),
    language: orUnknown(text("language")),
    needsInterpreter: orUnknown(text("needsInterpreter")),
    alternateName: orUnknown(text("alternateName")),
    alternateTelephone: orUnknown(text("alternateTelephone")),
    homeNurse: orUnknown(text("homeNurse")),
    referrer: orUnknown(text("referrer")),
    familyDoctor: orUnknown(text("familyDoctor")),
    responsibleService: orUnknown(text("responsibleService")),
  };
}

/** A fact as it is typed: "~8 F" where it is estimated. Who said it is not written: whoever reads a list was told. */
function factCell<T>(fact: Fact<T>, print: (value: T) => string): string {
  if (fact.certainty === "unknown") return UNKNOWN;
  return `${fact.certainty === "estimated" ? "~" : ""}${print(fact.value)}`;
}

const inUnits =
  (...units: [LengthUnit, ...LengthUnit[]]) =>
  (length: Length): string =>
    printExactly(length, units);

const asIs = (word: string): string => word;

/** The catheter's clock in a column of its own only where it is not the tract's: a tube that was never exchanged has no exchange. */
function clockCells({ catheter, tract, story }: TubeState) {
  const time = story.find(({ eventId }) => eventId === catheter.eventId)?.time;
  const since = [isoWhen(catheter.since), time].filter(Boolean).join(" ");
  return isoWhen(catheter.since) === isoWhen(tract.since)
    ? { exchangedOn: "", placedOn: since }
    : { exchangedOn: since, placedOn: isoWhen(tract.since) };
}

/** When it came out; blank while it is in. A day that nobody knows is no reason to take it for one that is in. */
function removedCell({ status, ending, dislodged }: TubeState): string {
  if (status === "in") return "";
  const when = ending?.when ?? dislodged?.when;
  return when === undefined || when.precision === "unknown" ? "out, on an unknown day" : isoWhen(when);
}

const tubeCells = (tube: TubeState, note: string | null) => ({
  kind: kindOf(tube.kind).name,
  side: factCell(tube.side, asIs),
  size: factCell(tube.size, inUnits("F", "mm", "in")),
  ...clockCells(tube),
  plan: tube.plan === null ? "as protocol" : printPlan(tube.plan),
  from: tube.takenOverFrom ?? "",
  takes: factCell(tube.inside.takes, inUnits("in", "mm")),
  retention: factCell(tube.retention, asIs),
  fullLength: factCell(tube.fullLength, inUnits("cm", "mm")),
  externalLength: factCell(tube.externalLength, inUnits("cm", "mm")),
  flushOrder: factCell(tube.flushOrder, asIs),
  balloon: factCell(tube.balloonMl, (ml) => `${ml} mL`),
  cavity: tube.cavity ?? "",
  organ: tube.organ ?? "",
  route: tube.route ?? "",
  indication: tube.indication ?? "",
  role: tube.role,
  mode: tube.mode,
  removedOn: removedCell(tube),
  note: note ?? "",
});

/**
 * A tube and its patient as a row of a list: reading the row again understands what stands here. What a list has no column for is
 * not in it: measured insides, fixation, what is awaited to drain, everything that happened after the opening but the last exchange.
 */
export const writeRow = (
  patient: WrittenPatient,
  tube: TubeState,
  note: string | null,
): Cells<WrittenField> => ({ ...patientCells(patient), ...tubeCells(tube, note) });
