import { vi } from "vitest";
import { projectionOf } from "#db/queries/projections.ts";
import { stepLinesOfPatient } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { closeFlag, handFlag } from "#server/calls/flag-act.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { viewCall } from "#server/calls/view-call.ts";
import { today } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import { lineOf } from "#server/lists/list-line.ts";
import { recordReading } from "#server/output/record-reading.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import { bookVisit } from "#server/visits/book-visit.ts";
import { noteVisit } from "#server/visits/note-visit.ts";
import type { CallStory, NextOfLine } from "#shared/call/call-line.ts";
import type { QuestionInCall } from "#shared/record/call/calling-context.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { compareSteps, type OpenStep } from "#shared/step/step.ts";
import { fold } from "#shared/tube/fold.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";
import { people } from "#tests/support/database.ts";
import { instantOf, type Moment } from "#tests/support/simulated/moment.ts";

/** What stands of a patient, without how many entries there are, and what the call list says is tried next. */
export type Stands = {
  readonly state: Omit<PatientTubes, "lastSeq">;
  readonly steps: readonly OpenStep[];
  readonly next: NextOfLine | null;
};

const { lastSeq: _none, ...nothing } = fold([]);

/** One patient's record in a database, by the use cases of the screens. Moves the clock of the test, which must be a fake one. */
export class StoredRecord {
  readonly patientId: string;
  readonly #db: Database;
  #stands: Stands | null = null;
  #lastAct = "";

  constructor(db: Database, patientId: string) {
    this.#db = db;
    this.patientId = patientId;
  }

  /** As it is stored: what the lists ask and a patient's page shows. */
  get stands(): Stands {
    this.#stands ??= this.#read();
    return this.#stands;
  }

  questions(at: Moment): readonly QuestionInCall[] {
    vi.setSystemTime(instantOf(at));
    return viewCall(this.#caller, { patientId: this.patientId }).context.questions;
  }

  call(at: Moment, texts: Texts): void {
    saveCall(this.#caller, { ...this.#act(at), texts });
  }

  hand(at: Moment, flagId: string, texts: Texts): void {
    handFlag(this.#caller, { ...this.#act(at), flagId, texts });
  }

  close(at: Moment, flagId: string, texts: Texts): void {
    closeFlag(this.#caller, { ...this.#act(at), flagId, texts });
  }

  /** `tubeId`: null where a form is about the patient, or opens a record. */
  record(at: Moment, form: FormKind, { tubeId, texts }: { tubeId: string | null; texts: Texts }): void {
    recordEvent(this.#caller, form, { ...this.#act(at), texts, ...(tubeId !== null && { tubeId }) });
  }

  /** A volume of a diary. */
  log(at: Moment, tubeId: string, texts: Texts): void {
    recordReading(this.#caller, { ...this.#act(at), tubeId, texts });
  }

  /** A visit for the exchange of one tube. */
  book(at: Moment, tubeId: string, texts: Texts): void {
    bookVisit(this.#nurse, { ...this.#act(at), tubes: [{ tubeId, act: "exchange" }], urgent: false, texts });
  }

  /** Nobody came. */
  miss(at: Moment, visitId: string): void {
    noteVisit(this.#nurse, { ...this.#act(at), visitId, state: "did not attend", texts: {} });
  }

  /** Takes back what was done last. */
  undo(at: Moment): void {
    const undoes = this.#lastAct;
    undoAct(this.#nurse, { actId: this.#act(at).actId, undoes });
  }

  get #caller() {
    return { db: this.#db, staff: people.caller };
  }

  get #nurse() {
    return { db: this.#db, staff: people.nurse };
  }

  /** An act that has seen everything; from then on what stood is out of date. */
  #act(at: Moment) {
    vi.setSystemTime(instantOf(at));
    this.#stands = null;
    this.#lastAct = newId();
    return { actId: this.#lastAct, patientId: this.patientId, lastSeen: Number.MAX_SAFE_INTEGER };
  }

  #read(): Stands {
    const { patient, tubes, callLine } = projectionOf(this.#db, this.patientId);
    if (patient === undefined) return { state: nothing, steps: [], next: null };
    const { tubes: state } = patient.state as { readonly tubes: PatientTubes };
    const on = today(this.#db);
    return {
      state: {
        ...state,
        tubes: tubes.map((row) => row.state as TubeState).toSorted((a, b) => a.number - b.number),
      },
      steps: stepLinesOfPatient(this.#db, this.patientId)
        .map((row) => lineOf(row, on).step)
        .toSorted(compareSteps),
      next: (callLine?.line as CallStory | undefined)?.next ?? null,
    };
  }
}
