import type { FindingName, Findings } from "#shared/clinical/findings-schema.ts";
import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";
import { known } from "#shared/tube/certainty.ts";

/** When something was found, and by which entry. `time` is the clock time at the clinic, null where only the day is known. */
export type FoundAt = {
  readonly when: When;
  readonly time: string | null;
  readonly eventId: string;
  readonly recordedOn: Day;
};

/** A finding that stands: the fact with its certainty, and when it was so. */
export type Found<K extends FindingName> = FoundAt & { readonly fact: NonNullable<Findings[K]> };

/** The newest standing finding of each item; an item that nobody ever spoke of is absent. */
export type ClinicalState = { readonly [K in FindingName]?: Found<K> };

/** The day on which a film was taken orders films, not the day on which somebody told of it. */
function isOlderFilm(before: ClinicalState["imaging"], found: Findings["imaging"]): boolean {
  const [last, next] = [before && known(before.fact), found && known(found)];
  return last !== undefined && next !== undefined && next.on < last.on;
}

/** What was known with what was found now, item by item. Findings come in the order in which they were so. */
export function withFindings(state: ClinicalState, findings: Findings, at: FoundAt): ClinicalState {
  const found = Object.entries(findings).flatMap(([name, fact]) => {
    if (fact === undefined) return [];
    if (name === "imaging" && isOlderFilm(state.imaging, findings.imaging)) return [];
    return [[name, { ...at, fact }]];
  });
  return { ...state, ...Object.fromEntries(found) };
}
