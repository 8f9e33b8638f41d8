import { vi } from "vitest";
import { clinicOf } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { closeFlag, handFlag } from "#server/calls/flag-act.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { viewCall } from "#server/calls/view-call.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { undoAct } from "#server/record/undo-act.ts";
import type { QuestionInCall } from "#shared/record/call/calling-context.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { fold } from "#shared/tube/fold.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import { people } from "#tests/support/database.ts";
import { instantOfMoment, type KeptRecord, type Moment } from "#tests/support/simulated/kept-record.ts";

type Stands = { readonly state: PatientTubes; readonly steps: readonly OpenStep[] };

/** By the use cases, in a database. Moves the clock of the test, which must be a fake one. */
export class StoredRecord implements KeptRecord {
  readonly #db: Database;
  readonly #patientId: string;
  #stands: Stands | null = null;
  #lastAct = "";

  constructor(db: Database, patientId: string) {
    this.#db = db;
    this.#patientId = patientId;
  }

  state = (): PatientTubes => this.#read().state;
  steps = (): readonly OpenStep[] => this.#read().steps;

  questions = (at: Moment): readonly QuestionInCall[] => {
    this.#clock(at);
    return viewCall(this.#doing(), { patientId: this.#patientId }).context.questions;
  };

  call = (at: Moment, texts: Texts): void => {
    saveCall(this.#doing(), this.#about(at, texts));
  };

  hand = (at: Moment, flagId: string, texts: Texts): void => {
    handFlag(this.#doing(), { ...this.#about(at, texts), flagId });
  };

  close = (at: Moment, flagId: string, texts: Texts): void => {
    closeFlag(this.#doing(), { ...this.#about(at, texts), flagId });
  };

  record = (at: Moment, form: FormKind, { tubeId, texts }: { tubeId: string | null; texts: Texts }): void => {
    recordEvent(this.#doing(), form, { ...this.#about(at, texts), ...(tubeId !== null && { tubeId }) });
  };

  undo = (at: Moment): void => {
    const undoes = this.#lastAct;
    const { actId } = this.#about(at, {});
    undoAct({ db: this.#db, staff: people.nurse }, { actId, undoes });
  };

  #doing = () => ({ db: this.#db, staff: people.caller });

  #clock(at: Moment): void {
    vi.setSystemTime(instantOfMoment(at, clinicOf(this.#db).zone));
  }

  /** What an act sends that has seen everything; from then on what stood is out of date. */
  #about(at: Moment, texts: Texts) {
    const lastSeen = this.state().lastSeq;
    this.#clock(at);
    this.#stands = null;
    this.#lastAct = newId();
    return { actId: this.#lastAct, patientId: this.#patientId, lastSeen, texts };
  }

  #read(): Stands {
    if (this.#stands === null) {
      const { events, books } = loadRecord(this.#db, this.#patientId);
      const state = fold(events);
      this.#stands = { state, steps: openSteps(state, books) };
    }
    return this.#stands;
  }
}
