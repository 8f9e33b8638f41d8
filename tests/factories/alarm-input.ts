import { day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import type { AlarmInput } from "#shared/output/alarm/reason.ts";
import type { Reading } from "#shared/output/reading.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { fold } from "#shared/tube/fold.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { at, flush, gross, reading } from "#tests/factories/reading.ts";
import { type Entry, placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";

/** What ran from one time of UTC to another, `2026-11-02T08:00`, in mL, without flush and without a character. */
export const ran = (from: string, to: string, ml: number, more: Partial<Reading> = {}): Reading =>
  reading({
    id: `r${from}`,
    from: at(`${from}Z`),
    to: at(`${to}Z`),
    zone: zone("UTC"),
    gross: gross(ml),
    flushGiven: flush(0),
    characters: [],
    ...more,
  });

/** The date so many days after the first of a month: `dated(3)` is 2026-11-04. */
export const dated = (after: number, month = "2026-11"): string =>
  new Date(Date.parse(`${month}-01T00:00Z`) + after * 86_400_000).toISOString().slice(0, 10);

/** Whole days of UTC in a row, with what each brought in mL; null: nobody measured. */
export const wholeDays = (volumes: readonly (number | null)[], first = 0): Reading[] =>
  volumes.flatMap((ml, index) => {
    const [from, to] = [dated(first + index), dated(first + index + 1)];
    return ml === null ? [] : [ran(`${from}T00:00`, `${to}T00:00`, ml)];
  });

const accepted = { eventId: "accepted", recordedOn: day("2026-10-01"), acceptedBy: "Dr. Orla Invented" };
type Said = Pick<TubeState, "answered"> & {
  readonly usual: readonly Omit<TubeState["usual"][number], "eventId" | "recordedOn" | "acceptedBy">[];
};
type Asked = Partial<Omit<AlarmInput, "tube"> & Said> & { readonly entries?: readonly Entry[] };

/** A left nephrostomy of August in a clinic of UTC, read by the example table; nothing answered, no usual level. */
export function alarmInput(
  readings: readonly Reading[],
  { entries = [placed()], answered = [], usual = [], ...more }: Asked = {},
): AlarmInput {
  const [tube] = fold(history(...entries)).tubes;
  return {
    tube: { ...tube!, answered, usual: usual.map((level) => ({ ...accepted, ...level })) },
    conditions: {},
    clinical: {},
    others: () => [],
    readings,
    zone: zone("UTC"),
    protocol: exampleProtocol,
    ...more,
  };
}
