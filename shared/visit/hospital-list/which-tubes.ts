import {
  type BookingAnswers,
  type Chosen,
  choiceWord,
  chosenIn,
} from "#shared/visit/hospital-list/columns.ts";
import type { ReadBooking } from "#shared/visit/hospital-list/read-booking.ts";
import type { WhatSaid } from "#shared/visit/hospital-list/say-what.ts";
import type { HereTube } from "#shared/visit/hospital-list/whom.ts";
import { type VisitAct, visitActs } from "#shared/visit/visit-acts.ts";

/** One thing that can be meant, as a list of choices offers it. */
export type BookingOption = { readonly value: string; readonly label: string };

export type MeantTubes =
  | { readonly ok: true; readonly tubes: readonly HereTube[]; readonly act: VisitAct }
  | { readonly ok: false; readonly options: readonly BookingOption[] };

const ofKind = ({ kind }: Pick<WhatSaid, "kind">, tubes: readonly HereTube[]): readonly HereTube[] =>
  kind === null ? tubes : tubes.filter((tube) => tube.kind === kind);

/** Both of a pair: one of each side, and no third that may be meant. */
function pairIn(tubes: readonly HereTube[]): readonly HereTube[] | null {
  const sides = tubes.map(({ side }) => side);
  return tubes.length === 2 && sides.includes("left") && sides.includes("right") ? tubes : null;
}

/** The tubes that the words leave no doubt about; null where they do. A side that nobody knows may be the one that is said. */
function tubesSaid(said: WhatSaid, tubes: readonly HereTube[]): readonly HereTube[] | null {
  const kindred = ofKind(said, tubes);
  if (said.both) return pairIn(kindred);
  const found =
    said.side === null ? kindred : kindred.filter(({ side }) => side === said.side || side === null);
  const [only, another] = found;
  if (only === undefined || another !== undefined) return null;
  return said.side !== null && only.side === null ? null : [only];
}

function optionsOf(tubes: readonly HereTube[], acts: readonly VisitAct[]): readonly BookingOption[] {
  const groups = tubes.length > 1 ? [...tubes.map((tube) => [tube]), tubes] : [tubes];
  return groups.flatMap((group) =>
    acts.map((act) => ({
      value: choiceWord({ numbers: group.map(({ number }) => number), act }),
      label: `${group.map(({ name }) => name).join(" and ")}: ${act}`,
    })),
  );
}

function chosenTubes(chosen: Chosen | null, tubes: readonly HereTube[]): MeantTubes | null {
  if (chosen === null) return null;
  const found = chosen.numbers.flatMap((number) => tubes.find((tube) => tube.number === number) ?? []);
  return found.length === chosen.numbers.length ? { ok: true, tubes: found, act: chosen.act } : null;
}

/**
 * The tubes and the act that a row means: as chosen; else the only tube that is in, or the one that its words name; and the act that they
 * name, or that was answered for rows that name none. Anything else is asked, never guessed.
 */
export function tubesMeant(
  { row, what }: Pick<ReadBooking, "row" | "what">,
  tubes: readonly HereTube[],
  answers: Pick<BookingAnswers, "act" | "choices">,
): MeantTubes {
  const chosen = chosenTubes(chosenIn(answers, row), tubes);
  if (chosen !== null) return chosen;
  const found = tubesSaid(what, tubes);
  const act = what.act ?? answers.act;
  if (found !== null && act !== null) return { ok: true, tubes: found, act };
  return { ok: false, options: optionsOf(found ?? tubes, act === null ? visitActs : [act]) };
}
