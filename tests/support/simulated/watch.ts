import { type ClinicCalendar, isOpen } from "#shared/day/clinic-days.ts";
import { isDay } from "#shared/day/day.ts";
import { dayParts } from "#shared/protocol/call-rows.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";
import { ladder, type SimulatedPatient } from "#tests/support/simulated/simulated-patient.ts";
import { ownSteps } from "#tests/support/steps.ts";

/** Never more like steps running than this (common practice, no source). */
const MOST_ALIKE = 3;
/** The example's hours in which somebody is rung. */
const HOURS = { from: "09:00", to: "20:00" } as const;

/** What a simulated clinic breaks of its laws, and what came up in it, so that a law that was never tried is noticed. */
export class Watch {
  readonly broken: string[] = [];
  readonly came = new Map<StepKind, number>();
  typed = 0;
  inTrialsOnClosedDays = 0;
  /** The most like steps that ever followed one another. */
  alike = 0;
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
    const steps = patient.kept.steps();
    for (const tube of patient.kept.state().tubes)
      if (tube.status !== "ended" && ownSteps(steps, tube).length === 0)
        this.broken.push(`${tube.kind} ${tube.status} has no open step`);
    for (const step of steps) this.#look(step, patient);
    const last = patient.climbed.at(-1);
    const other = patient.climbed.findLastIndex((kind) => kind !== last);
    const alike = patient.climbed.length - 1 - other;
    this.alike = Math.max(this.alike, alike);
    if (alike > MOST_ALIKE) this.broken.push(`${alike} times ${last} running`);
  };

  #look(step: OpenStep, patient: SimulatedPatient): void {
    const { kind, dueOn, owner } = step;
    if (!isDay(dueOn) || !owner.role) this.broken.push(`${kind} without a day or an owner`);
    if (kind === "contradiction") this.broken.push(`contradiction: ${JSON.stringify(step.why)}`);
    if (!ladder.includes(kind)) return;
    this.came.set(kind, (this.came.get(kind) ?? 0) + 1);
    this.#lookAtDay(step, patient);
    const args = step.why.find(({ code }) => code === "next-try")?.args;
    if (typeof args?.at === "string" && (args.at < HOURS.from || args.at >= HOURS.to))
      this.broken.push(`${kind} at ${args.at}`);
    if (typeof args?.part === "string" && !dayParts.some((part) => part === args.part))
      this.broken.push(`${kind} in the ${args.part}`);
  }

  /** A window that holds no open day stands as it was asked, with a loose end beside it that says so. */
  #lookAtDay({ kind, dueOn }: OpenStep, { inTrial, kept }: SimulatedPatient): void {
    if (isOpen(dueOn, this.#calendar)) return;
    if (inTrial) this.inTrialsOnClosedDays += 1;
    else if (!kept.steps().some((step) => step.kind === "no day left"))
      this.broken.push(`${kind} on ${dueOn}, when the clinic is closed`);
  }
}
