import { clinicOf } from "#db/queries/clinic.ts";
import { draftsOfOthers } from "#db/queries/drafts.ts";
import type { Database } from "#db/sqlite.ts";
import { callContext } from "#server/calls/call-context.ts";
import { machineNow, now } from "#server/clock.ts";
import { loadRecord } from "#server/record/load-record.ts";
import type { Doing } from "#server/record/record-event.ts";
import { refuseClosedRecord } from "#server/record/refuse-closed-record.ts";
import { isReached } from "#shared/call/outcomes.ts";
import { clocksOf, thereAt } from "#shared/call/reach.ts";
import type { Instant } from "#shared/day/instant.ts";
import { DRAFT_LIFE_MS, draftContentSchema } from "#shared/record/draft.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";
import { standingEvents } from "#shared/tube/history.ts";

/** The form under which a call that is typed and not saved is kept; its subject is the patient. */
export const CALL_DRAFT = "calls.saved";

/** What somebody else typed of a call to this patient and did not save. */
export type OthersDraft = { readonly by: string; readonly savedAt: Instant; readonly texts: Texts };

function othersDraft(db: Database, staffId: string, patientId: string): OthersDraft | null {
  const since = machineNow() - DRAFT_LIFE_MS;
  for (const { by, savedAt, content } of draftsOfOthers(db, {
    staffId,
    form: CALL_DRAFT,
    subject: patientId,
  })) {
    const read = draftContentSchema.safeParse(content);
    if (savedAt > since && read.success) return { by, savedAt, texts: read.data.texts };
  }
  return null;
}

/** The last call that reached somebody, with what was told in it. */
function lastCall(events: readonly TubeEvent[]) {
  const calls = standingEvents(events).flatMap(({ event, when }) =>
    event.kind === "call attempted" && isReached(event.payload.outcome)
      ? [{ when, time: event.time, ...event.payload }]
      : [],
  );
  const last = calls.at(-1);
  if (last === undefined) return null;
  const { when, time, outcome, answers, note } = last;
  return { when, time, outcome, note, answers: answers.filter(({ says }) => says !== "not asked") };
}

/** Everything that one call needs on its screen beside what the patient's page shows: what is asked, what was tried, what was told last time. */
export function viewCall({ db, staff }: Doing, { patientId }: { readonly patientId: string }) {
  const record = loadRecord(db, patientId);
  refuseClosedRecord(db, record.patient);
  const state = fold(record.events);
  const { name, phone, zone } = clinicOf(db);
  const at = now(db);
  return {
    context: callContext(db, { record, state, at }),
    there: thereAt(at, clocksOf(zone, record.books.reach)),
    calls: state.calls,
    lastCall: lastCall(record.events),
    othersDraft: othersDraft(db, staff.id, patientId),
    clinic: { name, phone, zone },
    lastSeen: state.lastSeq,
  };
}

export type CallView = ReturnType<typeof viewCall>;
