import type { Findings } from "#shared/clinical/findings-schema.ts";
import { addDays, day } from "#shared/day/day.ts";
import { startOfDay, zone } from "#shared/day/instant.ts";
import type { CriterionInput } from "#shared/output/criterion/criterion-input.ts";
import { criterionOf } from "#shared/output/criterion/criterion-of.ts";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import type { Age18 } from "#shared/step/draft.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { fold } from "#shared/tube/fold.ts";
import { verdictSentence } from "#shared/words/criterion.ts";
import { at, gross, reading } from "#tests/factories/reading.ts";
import { clinicalStateNoted, type Entry, placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";

export const utc = zone("UTC");

/** Mon 16 Nov 2026, noon. */
export const noon = at("2026-11-16T12:00Z");

/** An abscess drain of Sun 1 Nov 2026. */
export const drain = (said: Parameters<typeof placed>[0] = {}): Entry =>
  placed({ kind: "abscess drain", side: "not sided", on: "2026-11-01", ...said });

/** Well since this morning: 36.8 °C, no chills. */
export const well: Entry = clinicalStateNoted({ on: "2026-11-16", at: "08:00" });

/** What ran in the whole of one day, measured, without flush. */
export const whole = (of: string, ml: number, said: Partial<Reading> = {}): Reading => {
  const from = startOfDay(day(of), utc);
  const to = startOfDay(addDays(day(of), 1), utc);
  return reading({ id: `${said.tubeId ?? "tube-1"} ${of}`, from, to, gross: gross(ml), zone: utc, ...said });
};

/** Whole days one after another, the last of them `until`. */
export const daily = (until: string, volumes: readonly number[], said: Partial<Reading> = {}): Reading[] =>
  volumes.map((ml, n) => whole(addDays(day(until), n + 1 - volumes.length), ml, said));

type Asked = {
  readonly entries?: readonly Entry[];
  readonly readings?: readonly Reading[];
  readonly now?: number;
  readonly tube?: string;
  readonly age?: Age18;
  readonly protocol?: Protocol;
  readonly zone?: typeof utc;
};

/** What the criterion of one tube of a told record is judged by: a drain that is well and of which nothing is measured, unless said otherwise. */
export function criterionInput({
  entries = [drain(), well],
  readings = [],
  now = noon,
  tube: id = "tube-1",
  age = "adult",
  protocol = exampleProtocol,
  zone: where = utc,
}: Asked): CriterionInput {
  const { tubes, clinical, conditions } = fold(history(...entries));
  const tube = tubes.find((one) => one.id === id);
  if (tube === undefined) throw new Error(`no tube ${id}`);
  const instant = now as typeof noon;
  return { tube, tubes, readings, clinical, conditions, age, protocol, zone: where, now: instant };
}

export const criterionWhen = (asked: Asked) => criterionOf(criterionInput(asked));

/** The verdict in words, with its first reason. */
export const said = (asked: Asked): string => verdictSentence(criterionWhen(asked), utc);

export const figure = (value: number) => confirmed({ value, asTyped: null });

/** A clinical state of 08:00 of that day: well, with something else beside it or in its place. */
export const state = (findings: Findings, on = "2026-11-16"): Entry =>
  clinicalStateNoted({
    on,
    at: "08:00",
    findings: { temperature: figure(36.8), chills: confirmed(false), ...findings },
  });

/** 8 and 6 mL on Sat 14 and Sun 15 Nov: both under the row's 10. */
export const low: readonly Reading[] = daily("2026-11-15", [8, 6]);
