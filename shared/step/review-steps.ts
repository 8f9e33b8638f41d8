import type { Day } from "#shared/day/day.ts";
import { changedCount } from "#shared/review/evidence.ts";
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

/** Readings that a decision rested on and that stand no more, or were added since: it is looked at again, now. */
function changedDrafts({ tube: { lastReview }, readings }: TubeQuestion): Draft[] {
  if (lastReview === null || lastReview.evidence === null) return [];
  const { gone, other } = changedCount(lastReview.evidence, readings);
  if (gone === 0 && other === 0) return [];
  const { recordedOn, eventId, decidedBy } = lastReview;
  const line = why("evidence-changed", { day: recordedOn, decidedBy, gone, other }, eventId);
  return [single("review", recordedOn, [line])];
}

/** A review that somebody asked for, one that a review set, and a decision to look at again. Due beside what the row asks. */
export function reviewDrafts(question: TubeQuestion, rowAsksReview: boolean): Draft[] {
  const { reviewed, reviewAsked } = question.tube;
  const drafts = changedDrafts(question);
  if (reviewAsked !== null) {
    const { by, askedBy, reason, eventId } = reviewAsked;
    drafts.push(single("review", by, [why("review-asked", { askedBy, reason }, eventId)]));
  }
  if (!rowAsksReview && reviewed !== null && reviewed.next !== null)
    drafts.push(single("review", reviewed.next, [reviewOn(reviewed.next, reviewed.eventId)]));
  return drafts;
}

export const reviewOn = (day: Day, eventId: string): Why => why("review-on", { day }, eventId);
