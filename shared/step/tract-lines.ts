import { addDays, type Day } from "#shared/day/day.ts";
import type { ProtocolRow } from "#shared/protocol/interval-row.ts";
import { type TractAges, tractAges } from "#shared/protocol/tract-ages.ts";
import { type TubeQuestion, why } from "#shared/step/draft.ts";
import type { Why } from "#shared/step/step.ts";
import { slowToHeal } from "#shared/tube/slow-to-heal.ts";

/** The ages of this tube's tract by its row. */
export const agesOf = ({ tube, conditions }: TubeQuestion, row: ProtocolRow): TractAges =>
  tractAges(row, { route: tube.route, slowToHeal: slowToHeal(conditions).yes.length > 0 });

type Planned = { readonly act: "exchange" | "remove" | "review"; readonly on: Day; readonly eventId: string };

/** The tract age before which the row has an act not done; null where it has no such age. */
function ageFor(question: TubeQuestion, row: ProtocolRow, act: Planned["act"]): number | null {
  switch (act) {
    case "exchange":
      return row.notExchangedBefore;
    case "remove":
      return agesOf(question, row).notRemovedBefore;
    case "review":
      return null;
  }
}

/**
 * What the row says against a day: that the tract is too young then, or that its age cannot be told. The tract counts from its latest
 * plausible day. The day stands all the same: it is said, not forbidden.
 */
export function tractTooYoung(
  question: TubeQuestion,
  row: ProtocolRow | null,
  { act, on, eventId }: Planned,
): Why[] {
  const days = row === null ? null : ageFor(question, row, act);
  if (row === null || days === null) return [];
  const { tract, tractBy } = question.tube;
  const since = tract.since.latest ?? tractBy;
  if (since === null) return [why("tract-age-unknown", { act, days, row: row.id }, eventId)];
  const from = addDays(since, days);
  return on >= from ? [] : [why("tract-too-young", { act, by: on, from, days, row: row.id }, eventId)];
}
