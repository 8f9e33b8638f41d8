import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";
import { type Parsed, parsed, type Refusal, unread } from "#shared/errors/refusal.ts";
import { printLength } from "#shared/size/print-length.ts";
import { known } from "#shared/tube/certainty.ts";
import type { Pins, TubeEvent } from "#shared/tube/event.ts";
import { type Aspect, opensTube, ruleOf } from "#shared/tube/event-kinds.ts";
import { fold } from "#shared/tube/fold.ts";
import { type EventKind, payloads } from "#shared/tube/payloads.ts";
import type { Contradiction, PatientTubes } from "#shared/tube/state.ts";

/** What somebody says happened; ids are drawn by the caller, since nothing here is random. */
export type Command = {
  readonly eventId: string;
  readonly kind: EventKind;
  readonly tubes: readonly string[];
  readonly when: When;
  readonly time: string | null;
  readonly daySequence: number;
  readonly payload: unknown;
  readonly amends: string | null;
  /** Sequence of the last event that the form had seen. */
  readonly lastSeen: number;
};

/** The clinic's moment: its day and clock time, and the versions that a clock starting now is pinned to. */
export type Now = { readonly today: Day; readonly time: string; readonly pins: Pins | null };

export type Decision =
  | { readonly ok: true; readonly events: readonly TubeEvent[]; readonly state: PatientTubes }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

type Payloaded = Pick<Command, "kind" | "amends" | "payload">;
type Spoken = Pick<TubeEvent, "id" | "kind" | "tubes" | "amends">;

type Guard = (asked: Asked) => Refusal | null;
type Asked = {
  readonly events: readonly TubeEvent[];
  readonly state: PatientTubes;
  readonly command: Command;
  readonly now: Now;
};

const refusal = (code: Refusal["code"], field?: string, args?: Refusal["args"]): Refusal => ({
  code,
  field,
  args,
});

/** What is said to have been so on a day that is still to come, or at a time later today. */
function future({ when, time }: Pick<Command, "when" | "time">, now: Now, field = "when"): Refusal | null {
  if (when.precision === "unknown") return null;
  if (when.earliest > now.today) return refusal("day-in-future", field, { day: when.earliest });
  const ahead = time !== null && when.earliest === now.today && time > now.time;
  return ahead ? refusal("time-in-future", "time", { time }) : null;
}

const notInFuture: Guard = ({ command, now }) => (command.kind === "voided" ? null : future(command, now));

const tubesKnown: Guard = ({ state, command }) => {
  const asked = opensTube(command.kind) ? command.tubes.slice(0, -1) : command.tubes;
  const every = asked.every((id) => state.tubes.some((tube) => tube.id === id));
  return every && command.tubes.length === ruleOf(command.kind).tubes ? null : refusal("tube-unknown");
};

/** A conversion names the tube that it closes, then the one that it opens. */
const convertsItsTubes: Guard = ({ command }) => {
  const read = command.kind === "converted" ? payloads.converted.safeParse(command.payload) : null;
  if (read === null || !read.success) return null;
  const [closes, opens] = command.tubes;
  return read.data.closes === closes && read.data.opens === opens ? null : refusal("tube-unknown");
};

const amendsKnownEntry: Guard = ({ events, command }) => {
  const amending = command.kind === "amended" || command.kind === "voided";
  if (!amending) return command.amends === null ? null : refusal("entry-unknown");
  return events.some((event) => event.id === command.amends) ? null : refusal("entry-unknown");
};

type Reach = {
  readonly root: string;
  readonly tubes: readonly string[];
  readonly touches: readonly Aspect[];
};

/** What an entry changes, and on which tubes; an amendment reaches as far as the entry that it speaks of in the end. */
function reachOf(events: readonly TubeEvent[], of: Spoken): Reach {
  const amended = of.amends === null ? undefined : events.find(({ id }) => id === of.amends);
  if (amended !== undefined) return reachOf(events, amended);
  return { root: of.id, tubes: of.tubes, touches: ruleOf(of.kind).touches };
}

/** An entry that names no tube concerns all of the patient's. */
const sharesTube = (a: Reach, b: Reach): boolean =>
  a.tubes.length === 0 || b.tubes.length === 0 || a.tubes.some((id) => b.tubes.includes(id));

/** Adding never conflicts; changing conflicts only with a later event on the same tube that touches the same. */
const nothingChangedMeanwhile: Guard = ({ events, command }) => {
  const asked = reachOf(events, { ...command, id: command.eventId });
  const since = events
    .filter((event) => event.seq > command.lastSeen)
    .filter((event) => {
      const reach = reachOf(events, event);
      if (reach.root === asked.root) return true;
      return sharesTube(reach, asked) && reach.touches.some((aspect) => asked.touches.includes(aspect));
    });
  if (since.length === 0) return null;
  return refusal("changed-meanwhile", undefined, { entries: since.map((event) => event.kind).join(", ") });
};

/** An upsize is larger and a downsize smaller than what is in place, where both sizes are known. */
const otherSize: Guard = ({ state, command }) => {
  const { kind } = command;
  if (kind !== "upsized" && kind !== "downsized") return null;
  const tube = state.tubes.find(({ id }) => id === command.tubes[0]);
  const read = payloads[kind].safeParse(command.payload);
  if (tube === undefined || !read.success) return null;
  const old = known(tube.size);
  const size = read.data.facts.size === undefined ? undefined : known(read.data.facts.size);
  if (old === undefined || size === undefined) return null;
  const args = { old: printLength(old, "F"), size: printLength(size, "F") };
  if (kind === "upsized") return size > old ? null : refusal("upsize-not-larger", "size", args);
  return size < old ? null : refusal("downsize-not-smaller", "size", args);
};

/** Tubes that an entry of the patient names in what it says. */
function tubesInside({ kind, payload }: Command): readonly string[] {
  const idOf = ({ tube }: { readonly tube: string }): string => tube;
  if (kind === "reconciled") {
    const read = payloads.reconciled.safeParse(payload);
    return read.success ? read.data.sides.map(idOf) : [];
  }
  if (kind === "visit booked") {
    const read = payloads["visit booked"].safeParse(payload);
    return read.success ? read.data.tubes.map(idOf) : [];
  }
  if (kind === "red flag raised") {
    const read = payloads["red flag raised"].safeParse(payload);
    return read.success && read.data.of !== null ? [idOf(read.data.of)] : [];
  }
  const read = kind === "reported out" ? payloads["reported out"].safeParse(payload) : null;
  return read?.success ? read.data.candidates.map(idOf) : [];
}

/** They are this patient's, each named once. */
const namesItsTubes: Guard = ({ state, command }) => {
  const named = tubesInside(command);
  if (new Set(named).size < named.length) return refusal("choice-repeated");
  return named.every((id) => state.tubes.some((tube) => tube.id === id)) ? null : refusal("tube-unknown");
};

/** What is recorded as out already was not told out just now. */
const candidatesAreIn: Guard = ({ state, command }) => {
  if (command.kind !== "reported out") return null;
  const named = tubesInside(command);
  const out = state.tubes.some(({ id, status }) => status !== "in" && named.includes(id));
  return out ? refusal("candidate-not-in") : null;
};

const guards: readonly Guard[] = [
  amendsKnownEntry,
  tubesKnown,
  convertsItsTubes,
  notInFuture,
  otherSize,
  namesItsTubes,
  candidatesAreIn,
  nothingChangedMeanwhile,
];

/** The same for the days that stand inside an entry. */
function futureInside(kind: EventKind, payload: unknown, now: Now): Refusal | null {
  const day = (when: When | null, field: string): Refusal | null =>
    when === null ? null : future({ when, time: null }, now, field);
  switch (kind) {
    case "taken over":
      return day(payloads[kind].parse(payload).tractSince, "tractSince");
    case "clock dated": {
      const { catheterSince, tractSince } = payloads[kind].parse(payload);
      return day(catheterSince, "catheterSince") ?? day(tractSince, "tractSince");
    }
    case "amended":
      return future(payloads[kind].parse(payload), now);
    default:
      return null;
  }
}

/** A payload as its kind reads it; what an amendment puts in place is read as the kind of the entry that it amends. */
function readPayload(asked: Asked, of: Payloaded): Parsed<unknown> {
  const { events, now } = asked;
  const read = payloads[of.kind].safeParse(of.payload);
  if (!read.success) return unread("entry-not-understood", { field: fieldOf(read.error) });
  const ahead = futureInside(of.kind, read.data, now);
  if (ahead !== null) return { ok: false, refusal: ahead };
  const target = of.kind === "amended" ? events.find((event) => event.id === of.amends) : undefined;
  if (target === undefined) return parsed(read.data);
  const amendment = payloads.amended.parse(read.data);
  const inner = readPayload(asked, { ...target, payload: amendment.payload });
  return inner.ok ? parsed({ ...amendment, payload: inner.value }) : inner;
}

const fieldOf = (error: { readonly issues: readonly { readonly path: readonly PropertyKey[] }[] }): string =>
  error.issues[0]?.path.map(String).join(".") ?? "";

/** Contradictions that the history did not have before. */
function newContradictions(before: PatientTubes, after: PatientTubes): readonly Contradiction[] {
  const stood = new Set(before.contradictions.map(({ code, eventId }) => `${code} ${eventId}`));
  return after.contradictions.filter(({ code, eventId }) => !stood.has(`${code} ${eventId}`));
}

/** What is wrong with an entry that contradicts others; with one taken away, that others rest on it. */
function contradicted({ events, command }: Asked, odd: readonly Contradiction[]): readonly Refusal[] {
  if (command.kind !== "voided") return odd.map(({ code }) => refusal(code));
  const kinds = odd.flatMap(({ eventId }) => events.find(({ id }) => id === eventId)?.kind ?? []);
  return [refusal("rests-on-entry", undefined, { entries: [...new Set(kinds)].join(", ") })];
}

/**
 * The events that a command makes of a patient's history, or why it makes none. Guards first, one rule and one code each; then
 * the whole history is folded again, and what would contradict it is refused.
 */
export function decide(events: readonly TubeEvent[], command: Command, now: Now): Decision {
  const state = fold(events);
  const asked: Asked = { events, state, command, now };
  const refusals = guards.map((guard) => guard(asked)).filter((found) => found !== null);
  if (refusals.length > 0) return { ok: false, refusals };
  const read = readPayload(asked, command);
  if (!read.ok) return { ok: false, refusals: [read.refusal] };
  const pins = ruleOf(command.kind).pins ? now.pins : null;
  if (pins === null && ruleOf(command.kind).pins) return { ok: false, refusals: [refusal("no-pins")] };
  const { eventId: id, kind, tubes, when, time, daySequence, amends } = command;
  const seq = state.lastSeq + 1;
  const event = {
    id,
    seq,
    kind,
    tubes,
    when,
    time,
    daySequence,
    amends,
    pins,
    payload: read.value,
    recordedOn: now.today,
  };
  const added = event as TubeEvent;
  const next = fold([...events, added]);
  const odd = newContradictions(state, next);
  return odd.length > 0
    ? { ok: false, refusals: contradicted(asked, odd) }
    : { ok: true, events: [added], state: next };
}
