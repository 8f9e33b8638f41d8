import { clocksOf, reachedAnyTime } from "#shared/call/reach.ts";
import type { Day } from "#shared/day/day.ts";
import { clockText, type Instant, instant, startOfDay, type Zone, zone } from "#shared/day/instant.ts";
import { exampleProtocol } from "#shared/protocol/example.ts";
import type { CallingContext, QuestionInCall } from "#shared/record/call/calling-context.ts";
import { callingForm } from "#shared/record/call/calling-form.ts";
import { entriesOfCall } from "#shared/record/call/entries-of-call.ts";
import { flagDoneForm } from "#shared/record/call/flag-done-form.ts";
import { handFlagForm } from "#shared/record/call/hand-flag-form.ts";
import { questionsInCall } from "#shared/record/call/questions-in-call.ts";
import { eventForms, type FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { type Entry, entryOf, type FormResult } from "#shared/record/form.ts";
import { formBeside } from "#shared/record/form-beside.ts";
import { tubesNamed } from "#shared/record/tubes-named.ts";
import { type Books, openSteps } from "#shared/step/open-steps.ts";
import type { OpenStep } from "#shared/step/step.ts";
import { type Command, decide } from "#shared/tube/decide.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";
import type { PatientTubes } from "#shared/tube/state.ts";

/** When somebody does something, in minutes of the clinic's day. */
export type Moment = { readonly on: Day; readonly minute: number };

/** A patient's record as a simulated clinic keeps it: what it types, and what stands then. */
export type KeptRecord = {
  readonly state: () => PatientTubes;
  readonly steps: () => readonly OpenStep[];
  readonly questions: (at: Moment) => readonly QuestionInCall[];
  readonly call: (at: Moment, texts: Texts) => void;
  readonly hand: (at: Moment, flagId: string, texts: Texts) => void;
  readonly close: (at: Moment, flagId: string, texts: Texts) => void;
  /** `tubeId`: null where a form is about the patient, or opens a record. */
  readonly record: (at: Moment, form: FormKind, of: { tubeId: string | null; texts: Texts }) => void;
  /** Takes back what was done last. */
  readonly undo: (at: Moment) => void;
};

const SEEN_ALL = Number.MAX_SAFE_INTEGER;
const PINS = { protocol: 1, calendar: 1 } as const;
const MS_A_MINUTE = 60_000;

export const instantOfMoment = ({ on, minute }: Moment, where: Zone): Instant =>
  instant(startOfDay(on, where) + minute * MS_A_MINUTE);

type Said = Pick<Command, "kind" | "when" | "time" | "payload"> & { readonly id?: string };

/** By the same forms, decisions, fold and steps as behind the screens, without a database. */
export class RecordInMemory implements KeptRecord {
  readonly #books: Books;
  readonly #utc = zone("UTC");
  #events: readonly TubeEvent[] = [];
  #last = 0;
  #ids = 0;
  #state = fold([]);
  #steps: readonly OpenStep[] | null = null;

  constructor(books: Books) {
    this.#books = books;
  }

  state = (): PatientTubes => this.#state;

  steps = (): readonly OpenStep[] => {
    this.#steps ??= openSteps(this.#state, this.#books);
    return this.#steps;
  };

  questions = (): readonly QuestionInCall[] =>
    questionsInCall({ protocol: exampleProtocol, patient: this.#state, drained: () => null });

  call = (at: Moment, texts: Texts): void => {
    const context: CallingContext = {
      ...this.#clock(at),
      questions: this.questions(),
      to: "the patient",
      number: null,
      interpreter: null,
      clocks: clocksOf(this.#utc, reachedAnyTime),
      hours: null,
    };
    const typed = entryOf(callingForm.read(texts, context));
    this.#tell(at, entriesOfCall(typed, this.#newId), []);
  };

  hand = (at: Moment, flagId: string, texts: Texts): void => {
    const { at: on, ...told } = entryOf(handFlagForm.read(texts, this.#besideFlag(at, flagId)));
    this.#tell(at, [{ kind: "red flag handed", ...on, payload: { flag: flagId, ...told } }], []);
  };

  close = (at: Moment, flagId: string, texts: Texts): void => {
    const { when, ...told } = entryOf(flagDoneForm.read(texts, this.#besideFlag(at, flagId)));
    this.#tell(at, [{ kind: "red flag done", ...when, payload: { flag: flagId, ...told } }], []);
  };

  record = (at: Moment, form: FormKind, { tubeId, texts }: { tubeId: string | null; texts: Texts }): void => {
    const { tubes } = this.#state;
    const context = formBeside({
      at: instantOfMoment(at, this.#utc),
      zone: this.#utc,
      tubes,
      tube: tubes.find(({ id }) => id === tubeId) ?? null,
      newTubeId: `tube-${tubes.length + 1}`,
      staff: [],
      shelf: [],
    });
    const read: FormResult<Entry> = eventForms[form].read(texts, context);
    const entry = entryOf(read);
    this.#tell(at, [entry], tubesNamed(entry, context));
  };

  undo = (at: Moment): void => {
    const undone = this.#events.slice(this.#last);
    for (const event of undone) {
      const payload = { reason: "undone", wrongPatient: false };
      const day = { precision: "day", earliest: at.on, latest: at.on } as const;
      this.#decide(at, { kind: "voided", when: day, time: null, payload }, { amends: event.id, tubes: [] });
    }
  };

  #newId = (): string => {
    this.#ids += 1;
    return `entry-${this.#ids}`;
  };

  #clock(at: Moment) {
    return { today: at.on, now: instantOfMoment(at, this.#utc), zone: this.#utc };
  }

  #besideFlag(at: Moment, flagId: string) {
    const told = this.#state.redFlags.find(({ id }) => id === flagId);
    if (told === undefined) throw new Error(`red flag ${flagId} is not open`);
    return { ...this.#clock(at), told: { when: told.when, time: told.time } };
  }

  #tell(at: Moment, said: readonly Said[], tubes: readonly string[]): void {
    this.#last = this.#events.length;
    for (const one of said) this.#decide(at, one, { amends: null, tubes });
  }

  #decide(at: Moment, { id, ...said }: Said, of: Pick<Command, "amends" | "tubes">): void {
    const command = { ...said, ...of, eventId: id ?? this.#newId(), daySequence: 0, lastSeen: SEEN_ALL };
    const time = clockText(instantOfMoment(at, this.#utc), this.#utc);
    const decision = decide(this.#events, command, { today: at.on, time, pins: PINS });
    if (!decision.ok) throw new Error(`${said.kind}: ${JSON.stringify(decision.refusals)}`);
    this.#events = [...this.#events, ...decision.events];
    this.#state = decision.state;
    this.#steps = null;
  }
}
