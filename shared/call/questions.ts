import { shutModes } from "#shared/output/low-day.ts";
import type { InsteadIf, QuestionRow } from "#shared/protocol/call-rows.ts";
import { levels } from "#shared/protocol/levels.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import { type Fact, known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

type Tube = Pick<
  TubeState,
  "id" | "number" | "kind" | "role" | "mode" | "status" | "side" | "retention" | "trial"
>;
type Patient = { readonly tubes: readonly Tube[] } & Pick<PatientTubes, "conditions">;

/** A question as it is asked: of the patient, or of one tube. */
export type Asked = { readonly row: QuestionRow; readonly tube: Tube | null };

const isShut = ({ mode, trial }: Tube): boolean => shutModes.includes(mode) || trial?.state === "running";

const names = <T>(list: readonly T[], value: T | undefined): boolean =>
  list.length === 0 || (value !== undefined && list.includes(value));

/** Told removed is not seen: until somebody confirms it, the tube may still be in and is asked about. */
const mayBeIn = ({ status }: Tube): boolean => status === "in" || status === "removal not confirmed";

/** Whether a question speaks of a tube that may be in: by what it is for, what it is, what holds it or usually does, and whether it is open. */
const speaksOf = ({ roles, kinds, heldBy, only }: QuestionRow, tube: Tube): boolean =>
  mayBeIn(tube) &&
  names(roles, tube.role) &&
  names(kinds, tube.kind) &&
  names(heldBy, known(tube.retention) ?? kindOf(tube.kind).retention) &&
  (only === null || (only === "shut") === isShut(tube));

/**
 * What is asked in a call, by the clinic's rows: of the patient first, in the order of the rows, then of each tube in the order of tubes. Of
 * the patient only where one of the tubes is meant. Pure; no rows, no questions.
 */
export function questionsOf(
  rows: readonly QuestionRow[],
  { tubes }: Pick<Patient, "tubes">,
): readonly Asked[] {
  const ofPatient = rows
    .filter((row) => row.of === "the patient" && tubes.some((tube) => speaksOf(row, tube)))
    .map((row): Asked => ({ row, tube: null }));
  const ofTubes = tubes.flatMap((tube) =>
    rows.filter((row) => row.of === "each tube" && speaksOf(row, tube)).map((row): Asked => ({ row, tube })),
  );
  return [...ofPatient, ...ofTubes];
}

const either = (...facts: readonly (Fact<boolean> | undefined)[]): boolean | "not known" => {
  const told = facts.map((fact) => (fact === undefined ? undefined : known(fact)));
  if (told.includes(true)) return true;
  return told.includes(undefined) ? "not known" : false;
};

/** Whether what makes another red flag of an answer holds for the patient, or for the tube that is spoken of. */
function holds(of: InsteadIf, tube: Tube | null, { conditions, tubes }: Patient): boolean | "not known" {
  switch (of) {
    case "immune suppression":
      return either(conditions.chemotherapy, conditions.immuneSuppression);
    case "cord injury at T6 or above":
      return either(conditions.cordInjuryT6OrAbove);
    case "a tube is shut":
      return (tube === null ? tubes.filter(mayBeIn) : [tube]).some(isShut);
  }
}

/** What an answer opens. */
export type Opened = {
  /** Null: it opens none by what is known. */
  readonly flag: RedFlagRow | null;
  /** Red flags that it would open instead, if something held that nobody knows of the patient: it is asked. */
  readonly ifSo: readonly { readonly of: InsteadIf; readonly flag: RedFlagRow }[];
};

/**
 * The red flag that an answer opens: of the row's own and of those in its place the one for which somebody is reached soonest; of two alike
 * the one that knows more of the patient. What is not known of the patient is never taken for absent: it is named with its flag.
 */
export function openedBy(
  { row, tube }: Asked,
  patient: Patient,
  { redFlags }: Pick<Protocol, "redFlags">,
): Opened {
  const find = (id: string | null): RedFlagRow | undefined => redFlags.find((flag) => flag.id === id);
  const instead = row.instead.flatMap(({ of, redFlag }) => {
    const flag = find(redFlag);
    return flag === undefined ? [] : [{ of, flag, holds: holds(of, tube, patient) }];
  });
  const found = [...instead.filter((one) => one.holds === true).map(({ flag }) => flag), find(row.redFlag)]
    .filter((flag) => flag !== undefined)
    .toSorted((a, b) => levels.indexOf(a.level) - levels.indexOf(b.level));
  const ifSo = instead.filter((one) => one.holds === "not known").map(({ of, flag }) => ({ of, flag }));
  return { flag: found[0] ?? null, ifSo };
}
