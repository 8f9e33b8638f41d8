import type { Draw } from "#seed-demo/seeded.ts";
import { type ClinicCalendar, isOpen, nextOpenDay } from "#shared/day/clinic-days.ts";
import { addDays, type Day, day, later } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";
import type { FormKind } from "#shared/record/event-forms.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import type { Happening, Numbered } from "#tests/support/simulated/fate.ts";
import { DayClock } from "#tests/support/simulated/moment.ts";
import { nothingCounted, type OwnCount } from "#tests/support/simulated/own-count.ts";
import { SimulatedCaller, TRIAL_CALLS } from "#tests/support/simulated/simulated-caller.ts";
import type { Stands, StoredRecord } from "#tests/support/simulated/stored-record.ts";

/** Entries after which somebody is called anew, whatever was tried before. */
const startsAgain: readonly FormKind[] = [
  "placed",
  "exchanged",
  "salvaged",
  "removed",
  "whereabouts noted",
  "clamp trial started",
  "clamp trial passed",
  "clamp trial failed",
];

type Clinic = {
  readonly draw: Draw;
  readonly calendar: ClinicCalendar;
  /** Told of the patient whenever something was typed. */
  readonly seen: (patient: SimulatedPatient) => void;
};

/** One patient of a simulated clinic, which does what the open steps ask on the day on which they ask it, and counts what it did. */
export class SimulatedPatient {
  readonly kept: StoredRecord;
  readonly count: OwnCount = nothingCounted();
  readonly caller: SimulatedCaller;
  /** Deaths that were recorded by mistake and taken back: what stood before, while it stood, and after. */
  readonly undone: { before: Stands; dead: readonly OpenStep[]; after: Stands }[] = [];
  readonly #clinic: Clinic;
  readonly #clock: DayClock;
  #fate: readonly Happening[];

  constructor(kept: StoredRecord, fate: readonly Happening[], clinic: Clinic) {
    this.kept = kept;
    this.#clinic = clinic;
    this.#fate = fate;
    this.#clock = new DayClock(fate[0]?.on ?? day("1970-01-01"));
    this.caller = new SimulatedCaller(this, {
      ...clinic,
      clock: this.#clock,
      seen: () => clinic.seen(this),
      fellOut: (tubeId) => this.#record("fell out", tubeId, { whole: "yes" }),
    });
  }

  /** The next day after one on which something happens or is asked; null: none is. */
  nextDay(after: Day): Day | null {
    const happens = this.#fate[0]?.on ?? null;
    const asked = this.kept.stands.steps.flatMap((step) => this.#doneOn(step, after) ?? []);
    return [...asked, ...(happens === null ? [] : [later(happens, addDays(after, 1))])].toSorted()[0] ?? null;
  }

  /** When somebody does a step that is not done by then; null: nobody does such a step here, and it stays open. */
  #doneOn(step: OpenStep, after: Day): Day | null {
    if (step.kind in this.#care)
      return nextOpenDay(later(step.dueOn, addDays(after, 1)), this.#clinic.calendar);
    return this.caller.doneOn(step, after);
  }

  /** Everything of one day: what happens, then what is asked. */
  live(on: Day): void {
    this.#clock.begin(on);
    for (; this.#fate[0] !== undefined && this.#fate[0].on <= on; this.#fate = this.#fate.slice(1))
      this.#happen(this.#fate[0]);
    this.#endTrials(on);
    if (this.kept.stands.state.died === null) this.caller.answerFlags();
    if (isOpen(on, this.#clinic.calendar)) this.#giveCare(on);
    this.caller.ring(on);
  }

  #record(form: FormKind, tubeId: string | null, texts: Texts = {}): void {
    // A call after it is about something else.
    if (startsAgain.includes(form)) this.caller.climbed = [];
    this.kept.record(this.#clock.next(), form, { tubeId, texts: { when: "now", ...texts } });
    this.#clinic.seen(this);
  }

  #end(tubeId: string, how: "removed" | "not replaced"): void {
    const tube = this.count.tubes.get(tubeId);
    if (tube !== undefined) tube.ended = { how, on: this.#clock.at.on };
  }

  #happen(happening: Happening): void {
    if (this.kept.stands.state.died !== null) return;
    const { what } = happening;
    if ("number" in happening) this.#ofNumbered(happening);
    else if (what === "placed") this.#place(happening);
    else if (what === "goes into hospital") this.#record("whereabouts noted", null, { place: "inpatient" });
    else if (what === "comes home") this.#record("whereabouts noted", null, { place: "at home" });
    else if (what === "dies") this.#die();
    else this.#dieByMistake();
  }

  #ofNumbered({ what, number }: Numbered): void {
    const { tubes } = this.kept.stands.state;
    const tube = tubes.find((one) => one.number === number && one.status === "in");
    if (tube !== undefined) this.#ofTube[what](tube.id);
  }

  readonly #ofTube: Readonly<Record<Numbered["what"], (tubeId: string) => void>> = {
    "comes out": (tubeId) => {
      this.#record("removed", tubeId, { whole: "yes" });
      this.#end(tubeId, "removed");
    },
    "falls out": (tubeId) => this.#record("fell out", tubeId, { whole: "yes" }),
    "trial starts": (tubeId) => this.#record("clamp trial started", tubeId, { covers: "the ward" }),
    "is booked": (tubeId) => this.#book(tubeId),
    drains: (tubeId) => {
      this.kept.log(this.#clock.next(), tubeId, { drained: "60", flushGiven: "10", to: "now" });
      this.#clinic.seen(this);
    },
  };

  #place({ kind, side }: Extract<Happening, { readonly what: "placed" }>): void {
    this.#record("placed", null, { kind, side, size: "8 F" });
    const opened = this.kept.stands.state.tubes.at(-1);
    if (opened !== undefined) this.count.tubes.set(opened.id, { kind, ended: null });
  }

  /** In the hospital's own book, whose slots nobody here has to find. */
  #book(tubeId: string): void {
    this.caller.climbed = [];
    const { calendar, draw } = this.#clinic;
    const on = nextOpenDay(addDays(this.#clock.at.on, draw.between(4, 30)), calendar);
    if (on === null) throw new Error("no open day is left for a visit");
    this.kept.book(this.#clock.next(), tubeId, { on: printDay(on), elsewhere: "the hospital's own book" });
    this.#clinic.seen(this);
  }

  #die(): void {
    this.#record("died", null);
    for (const tube of this.count.tubes.values()) tube.ended ??= { how: "died", on: this.#clock.at.on };
  }

  #dieByMistake(): void {
    const before = this.kept.stands;
    this.#record("died", null);
    const dead = this.kept.stands.steps;
    this.kept.undo(this.#clock.next());
    this.undone.push({ before, dead, after: this.kept.stands });
    this.#clinic.seen(this);
  }

  /** A trial whose calls were made, or that has run for so long, has come out. */
  #endTrials(on: Day): void {
    for (const { id, status, trial } of this.kept.stands.state.tubes) {
      if (status !== "in" || trial?.state !== "running") continue;
      if (trial.calls < TRIAL_CALLS && on < addDays(trial.recordedOn, 16)) continue;
      this.#record(this.#clinic.draw.percent(80) ? "clamp trial passed" : "clamp trial failed", id, {});
    }
  }

  /** What is done about a tube on the day on which its step is due, four times in five; else on the next open day. */
  readonly #care: Partial<Readonly<Record<StepKind, (tubeId: string, step: OpenStep) => void>>> = {
    exchange: (tubeId) => this.#record("exchanged", tubeId),
    "remove or exchange": (tubeId) => this.#ofTube["comes out"](tubeId),
    remove: (tubeId) => this.#ofTube["comes out"](tubeId),
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
    visit: (tubeId, step) => this.#comeOrNot(tubeId, step),
    rebook: (tubeId) => this.#book(tubeId),
  };

  /** Half of those who are booked do not come (invented). */
  #comeOrNot(tubeId: string, { id }: OpenStep): void {
    if (this.#clinic.draw.percent(50)) {
      this.#record("exchanged", tubeId);
      return;
    }
    this.caller.climbed = [];
    const visit = this.kept.stands.state.visits.find((one) => id === `${one.id}:visit`);
    if (visit === undefined) throw new Error(`${id} is of no visit`);
    this.kept.miss(this.#clock.next(), visit.id);
    this.#clinic.seen(this);
  }

  #giveCare(on: Day): void {
    for (const step of this.kept.stands.steps) {
      const { kind, tubeId, dueOn } = step;
      const does = this.#care[kind];
      if (does === undefined || tubeId === null || dueOn > on || !this.#clinic.draw.percent(80)) continue;
      const { state, steps } = this.kept.stands;
      const isIn = state.tubes.some(({ id, status }) => id === tubeId && status === "in");
      const stands = steps.some((one) => one.id === step.id);
      if (stands && (isIn || kind === "tube out")) does(tubeId, step);
    }
  }
}
