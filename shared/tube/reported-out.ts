import type { ReportedOut, TubeState } from "#shared/tube/state.ts";

/** Reports that one of several tubes is out which no removal of one of them has answered, in whatever order both were told. */
export const stillUnanswered = (
  reports: readonly ReportedOut[],
  tubes: ReadonlyMap<string, TubeState>,
): readonly ReportedOut[] =>
  reports.filter(({ candidates }) =>
    candidates.every(({ tube }) => tubes.get(tube)?.ending?.kind !== "removed"),
  );
