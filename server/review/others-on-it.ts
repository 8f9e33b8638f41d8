import { lastOpenedBy, whoOpenedSince } from "#db/queries/reads.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { storyOf } from "#server/record/story.ts";
import type { LoadedTube } from "#server/tubes/load-tube.ts";
import { may } from "#shared/access/may.ts";
import { instant } from "#shared/day/instant.ts";

/** What writes down that somebody was shown a tube's review. */
const OPENING = "review.view";

/** So long whoever opened a review may be at it still: a working day. */
const LATELY_MS = 12 * 3_600_000;

/** Decisions that are told; the story holds all. */
const TOLD = 3;

/**
 * Who else may be deciding on this tube: others who may decide and opened its review lately, and what others decided lately or since
 * this person last looked. It holds nobody back: whoever saves second is shown what changed meanwhile.
 */
export function othersOnIt(db: Database, { record, tube }: LoadedTube, staffId: string) {
  const at = now(db);
  const opening = { tubeId: tube.id, procedure: OPENING };
  const lately = instant(at - LATELY_MS);
  const looked = lastOpenedBy(db, { ...opening, staffId }) ?? lately;
  const since = Math.min(looked, lately);
  const opened = whoOpenedSince(db, { ...opening, since: lately })
    .filter((one) => one.staffId !== staffId && may(one, "record.reviewDecided"))
    .map(({ who, at: openedAt }) => ({ who, at: openedAt }));
  const decided = storyOf(db, record).filter(
    ({ kind, tubes, standing, recordedAt, recordedById }) =>
      kind === "review decided" &&
      tubes.includes(tube.id) &&
      (standing === "stands" || standing === "corrected") &&
      recordedAt >= since &&
      recordedById !== staffId,
  );
  return { now: at, opened, decided: decided.slice(0, TOLD) };
}
