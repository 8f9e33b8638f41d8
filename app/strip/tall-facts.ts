import { type Axis, placeOf } from "#app/strip/axis.ts";
import type { Strip, StripFacts } from "#app/strip/geometry.ts";
import type { Label } from "#app/strip/tall-layout.ts";
import { type Day, daysBetween } from "#shared/day/day.ts";
import { printDay, printWhen } from "#shared/day/print-day.ts";
import { listRank, rankOf } from "#shared/step/list-rank.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { isUndated } from "#shared/step/undated.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { marksOf } from "#shared/tube/strip.ts";

/** The day of the planned exchange, while the tube is in. */
export const plannedOn = ({ status, plannedExchange }: TubeState): Day | null =>
  status === "in" ? (plannedExchange?.on ?? null) : null;

function outOn({ status, dislodged, ending }: TubeState): Day | null {
  if (status === "in" || status === "removal not confirmed") return null;
  return ending?.when.earliest ?? dislodged?.when.earliest ?? null;
}

/** What a tube's own strip is drawn from; the window is that of the first step which hangs on the catheter's clock. */
export function stripFactsOf(tube: TubeState, steps: readonly OpenStep[], today: Day): StripFacts {
  const dated = steps.find((step) => !isUndated(step) && rankOf(step, steps) === listRank.clock);
  const { earliest, latest } = tube.catheter.since;
  return {
    today,
    clockEarliest: earliest,
    clockLatest: latest,
    outOn: outOn(tube),
    earliest: dated?.earliest ?? null,
    target: dated?.target ?? null,
    latest: dated?.latest ?? null,
    marks: marksOf(tube),
  };
}

type Drawn = { readonly strip: Strip; readonly axis: Axis; readonly today: Day };

/** What is printed over a tube's own strip: how its clock began, every diamond, and the day of a planned exchange. */
export function labelsOf(tube: TubeState, { strip, axis, today }: Drawn): Label[] {
  const { eventId, since } = tube.catheter;
  const began = tube.story.find((line) => line.eventId === eventId)?.kind ?? "placed";
  const planned = plannedOn(tube);
  const plan =
    planned === null
      ? []
      : [{ at: placeOf(daysBetween(today, planned), axis), text: `planned for ${printDay(planned)}` }];
  return [
    { at: startPlace(strip), text: `${began}, ${printWhen(since)}` },
    ...strip.marks.map(({ at, on, kinds }) => ({ at, text: `${kinds.join(", ")}, ${printDay(on)}` })),
    ...plan,
  ];
}

function startPlace({ start }: Strip): number {
  switch (start.kind) {
    case "day":
      return start.at;
    case "span":
      return Math.max(0, start.from);
    case "before the axis":
    case "unknown":
      return 0;
  }
}
