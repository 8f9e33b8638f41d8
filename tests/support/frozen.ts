import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { reachedAnyTime } from "#shared/call/reach.ts";
import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import type { Day } from "#shared/day/day.ts";
import { zone } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { readingSchema } from "#shared/output/reading-schema.ts";
import { liftProtocol } from "#shared/protocol/lift-protocol.ts";
import { protocolSchema } from "#shared/protocol/protocol.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import type { OpenStep } from "#shared/step/step.ts";
import type { TubeEvent } from "#shared/tube/event.ts";
import { fold } from "#shared/tube/fold.ts";
import { lift } from "#shared/tube/lift.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import type { StepKind } from "#shared/tube/step-kinds.ts";

/** An event as a release stored it: the payload at the version of its time. */
export type FrozenEvent = Omit<TubeEvent, "payload"> & {
  readonly payloadVersion: number;
  readonly payload: unknown;
};

/** What a release leaves behind: events of every kind, with the tables that their pins point into. */
export type FrozenEvents = {
  /** In the shape of its time. */
  readonly protocol: unknown;
  readonly calendar: ClinicCalendar;
  readonly patients: readonly {
    readonly name: string;
    readonly bornOn: Day | null;
    readonly events: readonly FrozenEvent[];
    /** Standing readings, in the shape of its time; the clinic lies in UTC. */
    readonly readings?: readonly unknown[];
  }[];
};

/** What they must still come to, patient by patient. */
export type FrozenResults = readonly {
  readonly name: string;
  readonly state: PatientTubes;
  readonly steps: readonly OpenStep[];
}[];

const FOLDER = fileURLToPath(new URL("../frozen/", import.meta.url));
const EVENTS = ".events.json";
const pathOf = (release: string, part: "events" | "expected"): string => `${FOLDER}${release}.${part}.json`;
const read = (path: string): unknown => JSON.parse(readFileSync(path, "utf8"));

export const frozenReleases = (): string[] =>
  readdirSync(FOLDER)
    .filter((name) => name.endsWith(EVENTS))
    .map((name) => name.slice(0, -EVENTS.length));

export const frozenEvents = (release: string): FrozenEvents =>
  read(pathOf(release, "events")) as FrozenEvents;
export const frozenResults = (release: string): FrozenResults =>
  read(pathOf(release, "expected")) as FrozenResults;

function lifted(event: FrozenEvent): TubeEvent {
  const { payloadVersion, ...rest } = event;
  const payload = lift(event.kind, payloadVersion, event.payload);
  if (!payload.ok) throw new DomainError(payload.refusal);
  return { ...rest, payload: payload.value } as TubeEvent;
}

/** What today's code makes of them, as it would stand in JSON. */
export function resultsOf({ protocol: stored, calendar, patients }: FrozenEvents): FrozenResults {
  const protocol = protocolSchema.parse(liftProtocol(stored));
  const results = patients.map(({ name, bornOn, events, readings: logged = [] }) => {
    const state = fold(events.map(lifted));
    const standing = logged.map((reading) => readingSchema.parse(reading));
    const books = {
      protocol: () => protocol,
      calendar: () => calendar,
      bornOn,
      zone: zone("UTC"),
      reach: reachedAnyTime,
      readings: (tube: string) => standing.filter(({ tubeId }) => tubeId === tube),
    };
    return { name, state, steps: openSteps(state, books) };
  });
  return JSON.parse(JSON.stringify(results)) as FrozenResults;
}

type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };

const isNothing = (value: Json): boolean =>
  value === null || (typeof value === "object" && Object.keys(value).length === 0);

const isRecord = (value: Json | undefined): value is { readonly [name: string]: Json } =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What is read today out of entries that releases before had too: a call is of the patient, with its time; anchors came out. */
const readSince: readonly string[] = ["calls", "when", "time", "discharged", "anchorsOut"];

/** Kinds of steps that rules 8 give otherwise, or beside the others; what they are frozen with is the release that brought them. */
const givenOtherwise: readonly StepKind[] = [
  "call",
  "call back",
  "alternate contact",
  "letter",
  "ask the referrer",
  "not reached",
  "diary",
  "tell of the tube",
];

/** Results without the steps of those kinds. */
export const withoutCalls = (results: FrozenResults): FrozenResults =>
  results.map((one) => ({ ...one, steps: one.steps.filter(({ kind }) => !givenOtherwise.includes(kind)) }));

/**
 * A result of today without what a release could not know yet: a name that its own result lacks and that says nothing here. A name
 * that says something stays, and differs.
 */
export function asThen(now: Json, then: Json | undefined): Json {
  if (Array.isArray(now))
    return now.map((item, n) => asThen(item, Array.isArray(then) ? then[n] : undefined));
  if (!isRecord(now)) return now;
  const before = isRecord(then) ? then : {};
  return Object.fromEntries(
    Object.entries(now)
      .filter(([name, value]) => name in before || !(isNothing(value) || readSince.includes(name)))
      .map(([name, value]) => [name, asThen(value, before[name])]),
  );
}

/** Writes a release's two files. What has been written once is never written again. */
export function freeze(release: string, events: FrozenEvents): void {
  const files = [pathOf(release, "events"), pathOf(release, "expected")] as const;
  for (const file of files) if (existsSync(file)) throw new Error(`${file} is frozen already.`);
  const [toEvents, toExpected] = files;
  writeFileSync(toEvents, `${JSON.stringify(events, null, 1)}\n`);
  writeFileSync(toExpected, `${JSON.stringify(resultsOf(events), null, 1)}\n`);
}
