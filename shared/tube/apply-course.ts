import { millilitres, toMl } from "#shared/output/microlitre.ts";
import { withResults } from "#shared/review/newest-tests.ts";
import {
  type Applied,
  type Appliers,
  endedBy,
  isOut,
  type OneTubeKind,
  restsOn,
  withMode,
} from "#shared/tube/applied.ts";
import { type Fact, known, unknownFact } from "#shared/tube/certainty.ts";
import type { coursePayloads } from "#shared/tube/course-payloads.ts";
import type { AnyEventOf, EventOf } from "#shared/tube/event.ts";
import type { Standing } from "#shared/tube/history.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { TroubleKind } from "#shared/tube/vocabulary.ts";

/** What is not known not to be so. */
const mayBe = (fact: Fact<boolean>): boolean => known(fact) !== false;

type TroubleEvent = AnyEventOf<TroubleKind>;

function isGrave(event: TroubleEvent): boolean {
  switch (event.kind) {
    case "leaking":
      return mayBe(event.payload.soaking);
    case "infected":
      return mayBe(event.payload.fever);
    case "bled":
      return mayBe(event.payload.heavy);
    case "blocked":
    case "broken":
      return true;
  }
}

const trouble = (tube: TubeState, event: TroubleEvent): Applied => ({
  tube: {
    ...tube,
    troubles: [...tube.troubles, { ...restsOn(event), kind: event.kind, grave: isGrave(event) }],
  },
});

/** A piece that stays behind ends the tube but not its record; whether one did may be unknown, and then it is asked. */
function broken(tube: TubeState, event: EventOf<"broken">, at: Standing): Applied {
  const next = trouble(tube, event);
  if (known(event.payload.fragmentInside) !== true) return next;
  return { tube: { ...next.tube, status: "fragment retained", ending: endedBy(at) } };
}

function repositioned(tube: TubeState, event: EventOf<"repositioned">, { when }: Standing): Applied {
  return {
    tube: {
      ...tube,
      dislodged: null,
      externalLength: event.payload.externalLength,
      tipConfirmed: null,
      repositioned: { ...restsOn(event), when },
    },
  };
}

function flushed(tube: TubeState, event: EventOf<"flushed">): Applied {
  const others = tube.concerns.filter((concern) => concern !== "hard to flush");
  const concerns = event.payload.went === "easily" ? others : [...others, "hard to flush" as const];
  return { tube: { ...tube, concerns } };
}

function trialStarted(tube: TubeState, event: EventOf<"clamp trial started">, { when }: Standing): Applied {
  const { covers } = event.payload;
  const trial = { ...restsOn(event), state: "running" as const, since: when, covers, calls: 0 };
  const next: TubeState = { ...tube, mode: "on a clamp trial", trial };
  return tube.mode === "on a clamp trial"
    ? { tube: next, contradiction: "already-on-trial" }
    : { tube: next };
}

function trialOver(
  tube: TubeState,
  event: AnyEventOf<"clamp trial passed" | "clamp trial failed">,
  { when }: Standing,
): Applied {
  const state = event.kind === "clamp trial passed" ? "passed" : "failed";
  const since = tube.trial?.since ?? when;
  const trial = { calls: 0, covers: null, ...tube.trial, ...restsOn(event), state, since } as const;
  const next: TubeState = { ...tube, mode: event.payload.mode, trial };
  return tube.mode === "on a clamp trial" ? { tube: next } : { tube: next, contradiction: "not-on-trial" };
}

/** Last filled minus found; whole microlitres, so that 10 less 9.5 is 0.5. */
function lossMl(filled: Fact<number>, found: Fact<number>): number | null {
  const [before, now] = [known(filled), known(found)];
  if (before === undefined || now === undefined) return null;
  return toMl(millilitres(before - now));
}

/** Refilled is not output, and the next loss counts from it. */
function balloonChecked(tube: TubeState, event: EventOf<"balloon checked">, { when }: Standing): Applied {
  const { found, refilled } = event.payload;
  const lossesMl = [...(tube.balloon?.lossesMl ?? []), lossMl(tube.balloonMl, found)];
  const next = { ...tube, balloonMl: refilled, balloon: { ...restsOn(event), when, lossesMl } };
  const retention = known(tube.retention) ?? "balloon";
  return retention === "balloon" ? { tube: next } : { tube: next, contradiction: "no-balloon" };
}

/** What was found is of the fluid, not of the catheter: another one leaves it standing. */
function fluidTested(tube: TubeState, event: EventOf<"fluid tested">, { when }: Standing): Applied {
  const { results, serumOn } = event.payload;
  return {
    tube: {
      ...tube,
      fluidTests: withResults(tube.fluidTests, results, { ...restsOn(event), when, serumOn }),
    },
  };
}

/** Kinds that happen to a tube that is in; while it is out they cannot be true. */
export const needsTubeIn: ReadonlySet<OneTubeKind> = new Set([
  "repositioned",
  "flushed",
  "unblocked",
  "clamp trial started",
  "suction changed",
  "balloon checked",
  "blocked",
  "leaking",
  "fluid tested",
]);

/** A tube that was told removed and is now flushed was still in: it was told in error. */
const stillIn = (tube: TubeState): TubeState =>
  tube.status === "removal not confirmed" ? { ...tube, status: "in", ending: null, unverified: null } : tube;

type CourseKind = keyof typeof coursePayloads;

const whileIn =
  <E>(apply: (tube: TubeState, event: E, at: Standing) => Applied) =>
  (tube: TubeState, event: E, at: Standing): Applied =>
    isOut(tube) ? { tube, contradiction: "already-out" } : apply(stillIn(tube), event, at);

export const courseAppliers: Appliers<CourseKind> = {
  repositioned: whileIn(repositioned),
  flushed: whileIn(flushed),
  unblocked: whileIn((tube) => ({
    tube: { ...tube, troubles: tube.troubles.filter(({ kind }) => kind !== "blocked") },
  })),
  "clamp trial started": whileIn(trialStarted),
  "clamp trial passed": trialOver,
  "clamp trial failed": trialOver,
  "suction changed": whileIn((tube, { payload }) => ({ tube: withMode(tube, payload.mode) })),
  "balloon checked": whileIn(balloonChecked),
  "anchors removed": (tube, { payload }) => ({
    tube: { ...tube, fixation: payload.fixation ?? unknownFact, anchorsOut: "this one" },
  }),
  blocked: whileIn(trouble),
  leaking: whileIn(trouble),
  infected: trouble,
  bled: trouble,
  broken,
  "fluid tested": whileIn(fluidTested),
};
