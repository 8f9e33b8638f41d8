import type { Draw } from "#seed-demo/seeded.ts";
import { ringingKinds } from "#shared/call/call-line.ts";
import type { NextTry } from "#shared/call/next-try.ts";
import type { Callee } from "#shared/call/outcomes.ts";
import { type ClinicCalendar, isOpen, nextOpenDay } from "#shared/day/clinic-days.ts";
import { addDays, type Day, later } from "#shared/day/day.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { callThatComesOut } from "#tests/support/simulated/make-call.ts";
import { type DayClock, instantOf, type Moment } from "#tests/support/simulated/moment.ts";
import { type OwnCount, roundOver } from "#tests/support/simulated/own-count.ts";
import type { StoredRecord } from "#tests/support/simulated/stored-record.ts";

/** A call that is due, and what follows it while nobody is reached. */
export const ladder: readonly StepKind[] = [
  "call",
  "call back",
  "alternate contact",
  "letter",
  "ask the referrer",
  "not reached",
];

/** What the call list says is next, as a step of the ladder. */
const rungOf: Readonly<Record<NextTry["next"], StepKind>> = {
  call: "call",
  "call back": "call back",
  "alternate contact": "alternate contact",
  letter: "letter",
  "referrer and family doctor": "ask the referrer",
  physician: "not reached",
};

/** Of the example row: on days 1, 2, 7 and 14. */
export const TRIAL_CALLS = 4;

const HALF_PAST_NINE = 9 * 60 + 30;
const EVENING = 21 * 60;
const byPart: Readonly<Record<string, number>> = { morning: 10 * 60, afternoon: 14 * 60, evening: 18 * 60 };
const minuteIn = (text: string): number => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));

/** A try that is due: of which rung, and the time or part of the day that somebody asked for or that the row gives. */
type Due = {
  /** Of a trial or a diary; of a call that came up and that nobody has tried yet; or of one that was tried. */
  readonly of: "no call" | "a new call" | "a call";
  readonly kind: StepKind;
  readonly on: Day;
  readonly at: string | null;
  readonly part: string | null;
};

type Patient = { readonly kept: StoredRecord; readonly count: OwnCount };

type Clinic = {
  readonly draw: Draw;
  readonly calendar: ClinicCalendar;
  readonly clock: DayClock;
  /** Told whenever something was typed. */
  readonly seen: () => void;
  /** A caller was told that a tube is out. */
  readonly fellOut: (tubeId: string) => void;
};

/** Whoever rings one patient of a simulated clinic: does what the ladder asks on the day on which it asks it, and counts what came of it. */
export class SimulatedCaller {
  /** Steps of the ladder that were done since somebody was reached, in order. */
  climbed: StepKind[] = [];
  #triedOf: Due["of"] = "a call";
  #lastTry: Day | null = null;
  /** What a physician decided after nobody was reached: when, and from when on somebody is called again. */
  #putOff: { readonly on: Day; readonly until: Day } | null = null;
  readonly #patient: Patient;
  readonly #clinic: Clinic;

  constructor(patient: Patient, clinic: Clinic) {
    this.#patient = patient;
    this.#clinic = clinic;
  }

  get inTrial(): boolean {
    const { tubes } = this.#patient.kept.stands.state;
    return tubes.some(({ status, trial }) => status === "in" && trial?.state === "running");
  }

  /** Whoever was called as often as the row asks waits for what comes of the trial. */
  get #asksOfTrial(): boolean {
    const { tubes } = this.#patient.kept.stands.state;
    return tubes.some(
      ({ status, trial }) => status === "in" && trial?.state === "running" && trial.calls < TRIAL_CALLS,
    );
  }

  /** When somebody does a step that is not done by then; null: no caller does it. */
  doneOn(step: OpenStep, after: Day): Day | null {
    const { kind } = step;
    const early = kind === "red flag" || (kind === "clamp trial" && this.inTrial);
    if (early) return later(step.dueOn, addDays(after, 1));
    const due = this.#dueOf(step);
    if (due === null) return null;
    const on = later(due.on, addDays(after, 1));
    return this.inTrial ? on : nextOpenDay(on, this.#clinic.calendar);
  }

  /**
   * Whether the list has to show the patient on a day, by what stands and what was done: whatever came up before the last try waits for the
   * next, or for a physician's day.
   */
  isRung(on: Day): boolean {
    const { steps, next } = this.#patient.kept.stands;
    return steps.some(({ kind, dueOn }) => {
      if (!ringingKinds.includes(kind) || dueOn > on) return false;
      if (kind === "red flag" || ladder.includes(kind)) return true;
      if (this.#lastTry === null) return this.#waitsUntil(dueOn) <= on;
      return dueOn > this.#lastTry || (next !== null && next.on <= on);
    });
  }

  /** Of a step that came up before a physician put the patient's calls off, the day on which they go on. */
  #waitsUntil(dueOn: Day): Day {
    if (this.#putOff === null || dueOn > this.#putOff.on) return dueOn;
    const { until } = this.#putOff;
    return later(dueOn, nextOpenDay(until, this.#clinic.calendar) ?? until);
  }

  /** What a step asks a caller to do. About a trial or a diary somebody is rung as the call list says: its own step says nothing of tries. */
  #dueOf({ kind, dueOn, why }: OpenStep): Due | null {
    if (ladder.includes(kind)) {
      const args = why.find(({ code }) => code === "next-try")?.args;
      const text = (value: unknown): string | null => (typeof value === "string" ? value : null);
      const of = args === undefined ? "a new call" : "a call";
      return { of, kind, on: dueOn, at: text(args?.at), part: text(args?.part) };
    }
    if (kind !== "diary" && !(kind === "clamp trial" && this.#asksOfTrial)) return null;
    const { next } = this.#patient.kept.stands;
    const asked = { next: "call", on: this.#waitsUntil(dueOn), at: null, part: null } as const;
    const { on, at, part, ...what } = next ?? asked;
    return { of: "no call", kind: rungOf[what.next], on, at, part };
  }

  /** What is due on a day: of the ladder, or else of a trial or a diary. */
  #due(on: Day): Due | null {
    const { steps } = this.#patient.kept.stands;
    const asked = [
      ...steps.filter(({ kind }) => ladder.includes(kind)),
      ...steps.filter(({ kind }) => kind === "clamp trial"),
      ...steps.filter(({ kind }) => kind === "diary"),
    ].flatMap((step) => this.#dueOf(step) ?? []);
    return asked.find((due) => due.on <= on) ?? null;
  }

  /** Tries whatever is due on a day. */
  ring(on: Day): void {
    const { calendar, clock, seen } = this.#clinic;
    for (let due = this.#due(on); due !== null; due = this.#due(on)) {
      if (!this.inTrial && !isOpen(on, calendar)) return;
      if (clock.at.minute >= EVENING) return;
      // What was tried about something else counts for no call that comes up after it.
      if (this.#triedOf === "no call" && due.of === "a new call") this.climbed = [];
      this.#triedOf = due.of;
      this.climbed.push(due.kind);
      this.#climb(due);
      seen();
    }
  }

  answerFlags(): void {
    const { draw, clock, seen } = this.#clinic;
    const { kept, count } = this.#patient;
    for (const [id, flag] of count.flags) {
      if (flag.done !== null) continue;
      if (flag.handed === null && draw.percent(80)) {
        const at = clock.next();
        kept.hand(at, id, { to: "Dr Example" });
        flag.handed = instantOf(at);
        seen();
      } else if (draw.percent(60)) {
        const at = clock.next();
        kept.close(at, id, { what: "seen", by: "Dr Example" });
        flag.done = instantOf(at);
        seen();
      }
    }
  }

  #climb({ kind, at, part }: Due): void {
    const { draw, clock } = this.#clinic;
    if (kind === "letter") this.#letter("the patient");
    else if (kind === "alternate contact") this.#call("the alternate contact", clock.next());
    else if (kind === "not reached") this.#decide();
    else if (kind !== "ask the referrer")
      this.#call(
        "the patient",
        clock.next(at === null ? (byPart[part ?? ""] ?? HALF_PAST_NINE) : minuteIn(at)),
      );
    else if (draw.percent(50)) this.#letter("the referrer and the family doctor");
    else this.#call("the referrer", clock.next());
  }

  /** A physician lets somebody be called again after some days, whatever day that is. */
  #decide(): void {
    const { draw, clock } = this.#clinic;
    const days = draw.between(3, 20);
    this.#record("not reached decided", { again: `+${days}`, decidedBy: "Dr Example", reason: "wait" });
    this.#over("not reached");
    this.#putOff = { on: clock.at.on, until: addDays(clock.at.on, days) };
  }

  #over(how: "attempt" | "another way" | "not reached"): void {
    roundOver(this.#patient.count, this.#clinic.clock.at.on, how);
    this.climbed = [];
    this.#lastTry = null;
    this.#putOff = null;
  }

  #letter(to: string): void {
    this.#record("letter sent", { to });
    this.#tried();
  }

  #record(form: "letter sent" | "not reached decided", texts: Texts): void {
    const texted = { tubeId: null, texts: { when: "now", ...texts } };
    this.#patient.kept.record(this.#clinic.clock.next(), form, texted);
  }

  #tried(): void {
    this.#patient.count.tried += 1;
    this.#lastTry = this.#clinic.clock.at.on;
  }

  #call(to: Callee, at: Moment): void {
    const { kept, count } = this.#patient;
    const { draw } = this.#clinic;
    const { texts, reached, opened, handed } = callThatComesOut(draw, to, () => kept.questions(at));
    kept.call(at, { when: "now", ...texts });
    this.#tried();
    if (to === "the patient") count.attempts += 1;
    if (reached) this.#over(to === "the patient" ? "attempt" : "another way");
    if (opened === null) return;
    const raised = kept.stands.state.redFlags.find(({ id }) => !count.flags.has(id));
    if (raised === undefined) throw new Error(`the answer to "${opened.id}" opened no red flag`);
    const told = instantOf(at);
    count.flags.set(raised.id, { raised: told, handed: handed ? told : null, done: null });
    if (opened.thenRecord === "tube out" && opened.tube !== null) this.#clinic.fellOut(opened.tube.id);
  }
}
