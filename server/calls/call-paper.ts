import { callOrder, countCalls } from "#db/queries/call-lines.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import { identifiersOf } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { type CallListLine, callLines, callNow, EVER } from "#server/calls/call-list.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { openedBy, questionsOf } from "#shared/call/questions.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { fold } from "#shared/tube/fold.ts";
import { numberedTitle, titlesOf, tubeDetail } from "#shared/tube/name.ts";

/** Patients on one print. */
const MOST = 40;

/** Which of so many callers, who go through the list in turns: each has the urgent ones first. */
export type Share = { readonly share: number; readonly of: number };

/** One patient's call on paper: how they are reached, their tubes, what is asked and what each answer opens. */
function onPaper(db: Database, line: CallListLine, protocol: Protocol) {
  const { events } = loadRecord(db, line.patient.id);
  const state = fold(events);
  const titles = titlesOf(state.tubes);
  const titleOf = (tube: Parameters<typeof numberedTitle>[0] & { readonly id: string }): string =>
    titles.get(tube.id) ?? numberedTitle(tube);
  const questions = questionsOf(protocol.calls?.questions ?? [], state).map((asked) => ({
    asks: asked.row.asks,
    opensOn: asked.row.opensOn,
    tube: asked.tube === null ? null : titleOf(asked.tube),
    writes: asked.row.thenRecord,
    ...openedBy(asked, state, protocol),
  }));
  const tubes = state.tubes
    .filter(({ status }) => status !== "ended")
    .map((tube) => ({ id: tube.id, title: titleOf(tube), detail: tubeDetail(tube) }));
  const inpatient =
    state.whereabouts?.place === "inpatient" ? (state.whereabouts.where ?? "a hospital") : null;
  const patient = { ...line.patient, identifiers: identifiersOf(db, line.patient.id) };
  return { ...line, patient, tubes, questions, inpatient };
}

/** The first of today's calls for one caller, for a day without network. */
export function callPaper(db: Database, { share, of }: Share) {
  const at = callNow(db);
  const { protocol } = viewProtocol(db);
  const { name, phone } = clinicOf(db);
  const ids = callOrder(db, { ...at, limit: MOST * of, skip: 0 }).filter(
    (_id, index) => index % of === share - 1,
  );
  const total = countCalls(db, { after: EVER, to: at.today });
  return {
    ...at,
    isExample: protocol.approved === null,
    clinic: { name, phone },
    patients: callLines(db, ids, at.today).map((line) => onPaper(db, line, protocol)),
    total,
    /** Of all calls of today, how many stand on no share. */
    left: Math.max(0, total - MOST * of),
  };
}
