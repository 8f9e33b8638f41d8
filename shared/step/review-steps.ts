import type { Day } from "#shared/day/day.ts";
import { type Draft, single, type TubeQuestion, why } from "#shared/step/draft.ts";
import type { Why } from "#shared/step/step.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** What was decided and is not done: each by its day, which is never put off. */
export const decidedDrafts = ({ decided }: TubeState): Draft[] =>
  decided.map(({ what, by, decidedBy, words, eventId }) => ({
    kind: what,
    window: { earliest: null, target: by, latest: by },
    why: [
      why("decided", { by, decidedBy }, eventId),
      ...(words === null ? [] : [why("decided-words", { words }, eventId)]),
    ],
  }));

/** A review that somebody asked for, and one that a review set. Due beside what the row asks. */
export function reviewDrafts({ tube }: TubeQuestion, rowAsksReview: boolean): Draft[] {
  const { reviewed, reviewAsked } = tube;
  const drafts: Draft[] = [];
  if (reviewAsked !== null) {
    const { by, askedBy, reason, eventId } = reviewAsked;
    drafts.push(single("review", by, [why("review-asked", { askedBy, reason }, eventId)]));
  }
  if (!rowAsksReview && reviewed !== null && reviewed.next !== null)
    drafts.push(single("review", reviewed.next, [reviewOn(reviewed.next, reviewed.eventId)]));
  return drafts;
}

export const reviewOn = (day: Day, eventId: string): Why => why("review-on", { day }, eventId);
