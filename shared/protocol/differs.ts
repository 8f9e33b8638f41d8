import type { Protocol } from "#shared/protocol/protocol.ts";
import type { TubeKind } from "#shared/tube/kind/kinds.ts";

/** Which kinds have other intervals in two versions; `all` where anything else differs too. */
export type Differs = "all" | readonly TubeKind[];

const text = (value: unknown): string => JSON.stringify(value);

/** What does not tell the version: its rows, and whether EXAMPLE stands on them. */
const beside = ({ version: _version, approved: _approved, intervals: _intervals, ...rest }: Protocol) => rest;

/** Whose dates two versions of the table can give otherwise. Rows in another order are no difference. */
export function differsFor(a: Protocol, b: Protocol): Differs {
  if (a === b) return [];
  if (text(beside(a)) !== text(beside(b))) return "all";
  const kinds = [...new Set([...a.intervals, ...b.intervals].map(({ kind }) => kind))];
  const of = (table: Protocol, kind: TubeKind): string =>
    text(
      table.intervals
        .filter((row) => row.kind === kind)
        .map(text)
        .toSorted(),
    );
  return kinds.filter((kind) => of(a, kind) !== of(b, kind));
}

/** The rows that alarms and questions about readings come from, a diary that stops among them. */
const ofOutput = ({ outputRows, output, redFlags, flush, balloon, calls }: Protocol) => [
  outputRows,
  output,
  redFlags,
  flush,
  balloon,
  calls?.diaryMissing ?? null,
];

/** Whether the logs of readings can ask for something else by one version than by the other. */
export const outputDiffers = (a: Protocol, b: Protocol): boolean =>
  a !== b && text(ofOutput(a)) !== text(ofOutput(b));

/** Whether two versions hold the same rows in the same order, whoever approved them. */
export const sameRows = (a: Protocol, b: Protocol): boolean =>
  text(beside(a)) === text(beside(b)) && text(a.intervals) === text(b.intervals);
