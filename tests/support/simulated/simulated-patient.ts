import type { Draw } from "#seed-demo/seeded.ts";
import type { Callee } from "#shared/call/outcomes.ts";
import { type ClinicCalendar, isOpen, nextOpenDay } from "#shared/day/clinic-days.ts";
import { addDays, type Day, day, later } from "#shared/day/day.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import type { Happening, Numbered } from "#tests/support/simulated/fate.ts";
import type { KeptRecord, Moment } from "#tests/support/simulated/kept-record.ts";
import { callThatComesOut } from "#tests/support/simulated/make-call.ts";
import { nothingCounted, type OwnCount, roundOver } from "#tests/support/simulated/own-count.ts";

/** A call that is due, and what follows it while nobody is reached. */
export const ladder: readonly StepKind[] = [
  "call",
  "call back",
  "alternate contact",
  "letter",
  "ask the referrer",
  "not reached",
];

/** Entries after which somebody is called anew, whatever was tried before. */
const startsAgain: readonly FormKind[] = [
  "placed",
  "exchanged",
  "salvaged",
  "removed",
  "whereabouts noted",
  "clamp trial started",
];

const NINE = 9 * 60;
const EVENING = 21 * 60;
const byPart: Readonly<Record<string, number>> = { morning: 10 * 60, afternoon: 14 * 60, evening: 18 * 60 };
const minuteIn = (text: string): number => Number(text.slice(0, 2)) * 60 + Number(text.slice(3));

/** What stands of a patient. */
type Stands = { readonly state: PatientTubes; readonly steps: readonly OpenStep[] };

type Clinic = {
  readonly draw: Draw;
  readonly calendar: ClinicCalendar;
  /** Told of the patient whenever something was typed. */
  readonly seen: (patient: SimulatedPatient) => void;
};

/** One patient of a simulated clinic, which does what the open steps ask on the day on which they ask it, and counts what it did. */
export class SimulatedPatient {
  readonly kept: KeptRecord;
  readonly count: OwnCount = nothingCounted();
  /** Steps of the ladder that were done since somebody was reached, in order. */
  climbed: StepKind[] = [];
  lastTry: Day | null = null;
  /** What a physician decided after nobody was reached: when, and until when nobody is called. */
  putOff: { readonly on: Day; readonly until: Day } | null = null;
  /** Deaths that were recorded by mistake and taken back: what stood before, while it stood, and after. */
  readonly undone: { before: Stands; dead: readonly OpenStep[]; after: Stands }[] = [];
  readonly #clinic: Clinic;
  #fate: readonly Happening[];
  #at: Moment;

  constructor(kept: KeptRecord, fate: readonly Happening[], clinic: Clinic) {
    this.kept = kept;
    this.#clinic = clinic;
    this.#fate = fate;
    this.#at = { on: fate[0]?.on ?? day("1970-01-01"), minute: NINE };
  }

  get inTrial(): boolean {
    return this.kept.state().tubes.some(({ status, trial }) => status === "in" && trial?.state === "running");
  }

  /** The next day after one on which something happens or is asked; null: none is. */
  nextDay(after: Day): Day | null {
    const happens = this.#fate[0]?.on ?? null;
    const asked = this.kept.steps().flatMap((step) => this.#doneOn(step, after) ?? []);
    return [...asked, ...(happens === null ? [] : [later(happens, addDays(after, 1))])].toSorted()[0] ?? null;
  }

  /** When somebody does a step that is not done by then; null: nobody does such a step here, and it stays open. */
  #doneOn({ kind, dueOn }: OpenStep, after: Day): Day | null {
    const on = later(dueOn, addDays(after, 1));
    if (kind === "red flag" || (kind === "clamp trial" && this.inTrial)) return on;
    if (ladder.includes(kind)) return this.inTrial ? on : nextOpenDay(on, this.#clinic.calendar);
    return kind in this.#care ? nextOpenDay(on, this.#clinic.calendar) : null;
  }

  /** Everything of one day: what happens, then what is asked. */
  live(on: Day): void {
    this.#at = { on, minute: NINE };
    for (; this.#fate[0] !== undefined && this.#fate[0].on <= on; this.#fate = this.#fate.slice(1))
      this.#happen(this.#fate[0]);
    this.#endTrials(on);
    this.#answerFlags();
    if (isOpen(on, this.#clinic.calendar)) this.#giveCare(on);
    this.#ring(on);
  }

  #moment(minute = 0): Moment {
    this.#at = { on: this.#at.on, minute: Math.max(minute, this.#at.minute + 1) };
    return this.#at;
  }

  #record(form: FormKind, tubeId: string | null, texts: Texts = {}): void {
    // A call after it is about something else.
    if (startsAgain.includes(form)) this.climbed = [];
    this.kept.record(this.#moment(), form, { tubeId, texts: { when: "now", ...texts } });
    this.#clinic.seen(this);
  }

  #end(tubeId: string, how: "removed" | "not replaced"): void {
    const tube = this.count.tubes.get(tubeId);
    if (tube !== undefined) tube.ended = { how, on: this.#at.on };
  }

  #happen(happening: Happening): void {
    if (this.kept.state().died !== null) return;
    const { what } = happening;
    if ("number" in happening) this.#ofNumbered(happening);
    else if (what === "placed") this.#place(happening);
    else if (what === "goes into hospital") this.#record("whereabouts noted", null, { place: "inpatient" });
    else if (what === "comes home") this.#record("whereabouts noted", null, { place: "at home" });
    else if (what === "dies") this.#die();
    else this.#dieByMistake();
  }

  #ofNumbered({ what, number }: Numbered): void {
    const tube = this.kept.state().tubes.find((one) => one.number === number && one.status === "in");
    if (tube !== undefined) this.#ofTube(what, tube.id);
  }

  #place({ kind, side }: Extract<Happening, { readonly what: "placed" }>): void {
    this.#record("placed", null, { kind, side, size: "8 F" });
    const opened = this.kept.state().tubes.at(-1);
    if (opened !== undefined) this.count.tubes.set(opened.id, { kind, ended: null });
  }

  #die(): void {
    this.#record("died", null);
    for (const tube of this.count.tubes.values()) tube.ended ??= { how: "died", on: this.#at.on };
  }

  #dieByMistake(): void {
    const before = { state: this.kept.state(), steps: this.kept.steps() };
    this.#record("died", null);
    const dead = this.kept.steps();
    this.kept.undo(this.#moment());
    this.undone.push({ before, dead, after: { state: this.kept.state(), steps: this.kept.steps() } });
    this.#clinic.seen(this);
  }

  #ofTube(what: "comes out" | "falls out" | "trial starts", tubeId: string): void {
    if (what === "falls out") this.#record("fell out", tubeId, { whole: "yes" });
    else if (what === "trial starts") this.#record("clamp trial started", tubeId, { covers: "the ward" });
    else {
      this.#record("removed", tubeId, { whole: "yes" });
      this.#end(tubeId, "removed");
    }
  }

  /** A trial whose calls were made, or that has run for so long, has come out. */
  #endTrials(on: Day): void {
    for (const { id, status, trial } of this.kept.state().tubes) {
      if (status !== "in" || trial?.state !== "running") continue;
      if (trial.calls < 4 && on < addDays(trial.recordedOn, 16)) continue;
      this.#record(this.#clinic.draw.percent(80) ? "clamp trial passed" : "clamp trial failed", id, {});
    }
  }

  #answerFlags(): void {
    if (this.kept.state().died !== null) return;
    for (const [id, flag] of this.count.flags) {
      if (flag.done !== null) continue;
      if (flag.handed === null && this.#clinic.draw.percent(80)) {
        flag.handed = this.#moment(NINE + 5);
        this.kept.hand(flag.handed, id, { to: "Dr Example" });
        this.#clinic.seen(this);
      } else if (this.#clinic.draw.percent(60)) {
        flag.done = this.#moment(NINE + 60);
        this.kept.close(flag.done, id, { what: "seen", by: "Dr Example" });
        this.#clinic.seen(this);
      }
    }
  }

  /** What is done about a tube on the day on which its step is due, four times in five; else on the next open day. */
  readonly #care: Partial<Readonly<Record<StepKind, (tubeId: string) => void>>> = {
    exchange: (tubeId) => this.#record("exchanged", tubeId),
    "remove or exchange": (tubeId) => this.#ofTube("comes out", tubeId),
    remove: (tubeId) => this.#ofTube("comes out", tubeId),
    "tell of the tube": (tubeId) =>
      this.#record("told of the tube", tubeId, {
        whom: "the patient",
        language: "English",
        by: "Corin Callwell",
      }),
    "tube out": (tubeId) => {
      if (this.#clinic.draw.percent(50)) this.#record("salvaged", tubeId);
      else {
        this.#record("not replaced", tubeId, { decidedBy: "Dr Example", reason: "no longer needed" });
        this.#end(tubeId, "not replaced");
      }
    },
  };

  #giveCare(on: Day): void {
    for (const { kind, tubeId, dueOn } of this.kept.steps()) {
      const does = this.#care[kind];
      if (does === undefined || tubeId === null || dueOn > on || !this.#clinic.draw.percent(80)) continue;
      const stands = this.kept.steps().some((step) => step.kind === kind && step.tubeId === tubeId);
      if (stands) does(tubeId);
    }
  }

  /** What is due of the ladder on a day, or else the call of a trial. */
  due(on: Day): OpenStep | null {
    const steps = this.kept.steps();
    const next = steps.find(({ kind }) => ladder.includes(kind));
    const step = next ?? steps.find(({ kind }) => kind === "clamp trial" && this.inTrial);
    return step !== undefined && step.dueOn <= on ? step : null;
  }

  #ring(on: Day): void {
    for (let step = this.due(on); step !== null; step = this.due(on)) {
      if (!this.inTrial && !isOpen(on, this.#clinic.calendar)) return;
      if (this.#at.minute >= EVENING) return;
      this.#climb(step);
      this.#clinic.seen(this);
    }
  }

  #climb(step: OpenStep): void {
    const { draw } = this.#clinic;
    const { kind } = step;
    if (ladder.includes(kind)) this.climbed.push(kind);
    if (kind === "letter") this.#letter("the patient");
    else if (kind === "alternate contact") this.#call("the alternate contact", this.#moment());
    else if (kind === "not reached") this.#decide();
    else if (kind !== "ask the referrer") this.#call("the patient", this.#timeOf(step));
    else if (draw.percent(50)) this.#letter("the referrer and the family doctor");
    else this.#call("the referrer", this.#moment());
  }

  /** The time or part of the day that the step names. */
  #timeOf({ why }: OpenStep): Moment {
    const args = why.find(({ code }) => code === "next-try")?.args;
    const at = typeof args?.at === "string" ? minuteIn(args.at) : byPart[String(args?.part)];
    return this.#moment(at ?? NINE + 30);
  }

  /** A physician lets somebody be called again after some days, whatever day that is. */
  #decide(): void {
    const days = this.#clinic.draw.between(3, 20);
    const texts = { when: "now", again: `+${days}`, decidedBy: "Dr Example", reason: "wait" };
    this.kept.record(this.#moment(), "not reached decided", { tubeId: null, texts });
    this.#over("not reached");
    this.putOff = { on: this.#at.on, until: addDays(this.#at.on, days) };
  }

  #over(how: "attempt" | "another way" | "not reached"): void {
    roundOver(this.count, this.#at.on, how);
    this.climbed = [];
    this.lastTry = null;
    this.putOff = null;
  }

  #letter(to: string): void {
    this.kept.record(this.#moment(), "letter sent", { tubeId: null, texts: { when: "now", to } });
    this.count.tried += 1;
    this.lastTry = this.#at.on;
  }

  #call(to: Callee, at: Moment): void {
    const { texts, reached, opened, handed } = callThatComesOut(
      this.#clinic.draw,
      to,
      this.kept.questions(at),
    );
    this.kept.call(at, { when: "now", ...texts });
    this.count.tried += 1;
    if (to === "the patient") this.count.attempts += 1;
    this.lastTry = at.on;
    if (reached) this.#over(to === "the patient" ? "attempt" : "another way");
    if (opened === null) return;
    const raised = this.kept.state().redFlags.find(({ id }) => !this.count.flags.has(id));
    if (raised === undefined) throw new Error(`the answer to "${opened.id}" opened no red flag`);
    this.count.flags.set(raised.id, { raised: at, handed: handed ? at : null, done: null });
    if (opened.thenRecord === "tube out" && opened.tube !== null)
      this.#record("fell out", opened.tube.id, { whole: "yes" });
  }
}
