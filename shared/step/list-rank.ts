import { betweenVisits, isLooseEnd, isUrgent, type OpenStep, visitKinds } from "#shared/step/step.ts";

/** The parts of the lists, in the order in which they are read. Stored with each step, so that a list is one indexed query. */
export const listRank = {
  /** Tube out, part out, fragment retained, alarm. */
  urgent: 0,
  /** What the catheter's clock asks for: exchange, removal, review. */
  clock: 1,
  /** Calls, and what is done between visits: a trial, water in a balloon, whereabouts. */
  call: 2,
  /** Something is missing or does not agree; the tube's own dates stand beside it. */
  looseEnd: 3,
  /** What a booked visit asks for, beside the dates of its tubes. */
  visit: 4,
} as const;
export type ListRank = (typeof listRank)[keyof typeof listRank];

const ofTheClock = ({ kind }: OpenStep): boolean =>
  kind === "exchange" || kind === "remove or exchange" || kind === "remove" || kind === "review";

const asksForDate = ({ kind }: OpenStep): boolean =>
  kind === "assess the date" || kind === "no row" || kind === "hospice";

/** A tube with no dated step is listed by the step that asks for a date, so that none falls out of the list of what comes next. */
function standsForItsTube(step: OpenStep, all: readonly OpenStep[]): boolean {
  const ofTube = all.filter(({ tubeId }) => tubeId === step.tubeId);
  return !ofTube.some(ofTheClock) && ofTube.find(asksForDate) === step;
}

/** In which part of the lists a step stands, among all steps of its patient. */
export function rankOf(step: OpenStep, all: readonly OpenStep[]): ListRank {
  if (isUrgent(step.kind)) return listRank.urgent;
  if (visitKinds.includes(step.kind)) return listRank.visit;
  if (betweenVisits.includes(step.kind)) return listRank.call;
  if (ofTheClock(step) || (asksForDate(step) && standsForItsTube(step, all))) return listRank.clock;
  return isLooseEnd(step.kind) ? listRank.looseEnd : listRank.clock;
}
