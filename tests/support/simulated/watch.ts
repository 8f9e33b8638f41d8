import { type ClinicCalendar, isOpen } from "#shared/day/clinic-days.ts";
import { isDay } from "#shared/day/day.ts";
import { dayParts } from "#shared/protocol/call-rows.ts";
import type { OpenStep, WhyCode } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { ladder } from "#tests/support/simulated/simulated-caller.ts";
import type { SimulatedPatient } from "#tests/support/simulated/simulated-patient.ts";
import { ownSteps } from "#tests/support/steps.ts";

/** Never more like steps running than this (common practice, no source). */
const MOST_ALIKE = 3;
/** The example's hours in which somebody is rung. */
const HOURS = { from: "09:00", to: "20:00" } as const;

/** What a simulated clinic breaks of its laws, and what came up in it, so that a law that was never tried is noticed. */
export class Watch {
  readonly broken: string[] = [];
  readonly came = new Map<StepKind, number>();
  /** Why somebody was called. */
  readonly causes = new Map<WhyCode, number>();
  typed = 0;
  inTrialsOnClosedDays = 0;
  /** The most like steps that ever followed one another. */
  alike = 0;
  #whose = "";
  readonly #calendar: ClinicCalendar;

  constructor(calendar: ClinicCalendar) {
    this.#calendar = calendar;
  }

  /**
   * Looked at after everything that is typed. Open steps do not depend on today: they are computed from entries and tables alone, so that those
   * that stand now stand on every day until the next entry.
   */
  readonly seen = (patient: SimulatedPatient): void => {
    this.typed += 1;
    this.#whose = patient.kept.patientId;
    const { steps, state, next } = patient.kept.stands;
    this.#lookAtHour(next?.at, next?.part);
    for (const tube of state.tubes)
      if (tube.status !== "ended" && ownSteps(steps, tube).length === 0)
        this.#breaks(`${tube.kind} ${tube.status} has no open step`);
    for (const step of steps) this.#look(step, patient);
    const { climbed } = patient.caller;
    const last = climbed.at(-1);
    const alike = climbed.length - 1 - climbed.findLastIndex((kind) => kind !== last);
    this.alike = Math.max(this.alike, alike);
    if (alike > MOST_ALIKE) this.#breaks(`${alike} times ${last} running`);
  };

  #breaks(what: string): void {
    this.broken.push(`${this.#whose}: ${what}`);
  }

  #look(step: OpenStep, patient: SimulatedPatient): void {
    const { kind, dueOn, owner } = step;
    if (!isDay(dueOn) || !owner.role) this.#breaks(`${kind} without a day or an owner`);
    if (kind === "contradiction") this.#breaks(`contradiction: ${JSON.stringify(step.why)}`);
    if (kind === "diary") this.#count(step);
    if (!ladder.includes(kind)) return;
    this.#count(step);
    this.#lookAtDay(step, patient);
    const args = step.why.find(({ code }) => code === "next-try")?.args;
    this.#lookAtHour(args?.at, args?.part);
  }

  #lookAtHour(at: unknown, part: unknown): void {
    if (typeof at === "string" && (at < HOURS.from || at >= HOURS.to))
      this.#breaks(`somebody is rung at ${at}`);
    if (typeof part === "string" && !dayParts.some((one) => one === part))
      this.#breaks(`somebody is rung in the ${part}`);
  }

  #count({ kind, why }: OpenStep): void {
    this.came.set(kind, (this.came.get(kind) ?? 0) + 1);
    for (const { code } of why) this.causes.set(code, (this.causes.get(code) ?? 0) + 1);
  }

  /** A window that holds no open day stands as it was asked, with a loose end beside it that says so. */
  #lookAtDay({ kind, dueOn }: OpenStep, { caller, kept }: SimulatedPatient): void {
    if (isOpen(dueOn, this.#calendar)) return;
    if (caller.inTrial) this.inTrialsOnClosedDays += 1;
    else if (!kept.stands.steps.some((step) => step.kind === "no day left"))
      this.#breaks(`${kind} on ${dueOn}, when the clinic is closed`);
  }
}
