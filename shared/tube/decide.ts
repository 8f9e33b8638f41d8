import type { Day } from "#shared/day/day.ts";
import type { When } from "#shared/day/when.ts";
import type { Refusal } from "#shared/errors/refusal.ts";
import { printLength } from "#shared/size/print-length.ts";
import { known } from "#shared/tube/certainty.ts";
import type { Pins, TubeEvent } from "#shared/tube/event.ts";
import { opensTube, ruleOf } from "#shared/tube/event-kinds.ts";
import { fold } from "#shared/tube/fold.ts";
import { type EventKind, payloads } from "#shared/tube/payloads.ts";
import type { PatientTubes } from "#shared/tube/state.ts";

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

const notInFuture: Guard = ({ command: { when, time, kind }, now }) => {
  if (kind === "voided" || when.precision === "unknown") return null;
  if (when.earliest > now.today) return refusal("day-in-future", "when", { day: when.earliest });
  if (time !== null && when.earliest === now.today && time > now.time)
    return refusal("time-in-future", "time", { time });
  return null;
};

const tubesKnown: Guard = ({ state, command }) => {
  const asked = opensTube(command.kind) ? command.tubes.slice(0, -1) : command.tubes;
  const every = asked.every((id) => state.tubes.some((tube) => tube.id === id));
  return every && command.tubes.length === ruleOf(command.kind).tubes ? null : refusal("tube-unknown");
};

const amendsKnownEntry: Guard = ({ events, command }) => {
  const amending = command.kind === "amended" || command.kind === "voided";
  if (!amending) return command.amends === null ? null : refusal("entry-unknown");
  return events.some((event) => event.id === command.amends) ? null : refusal("entry-unknown");
};

/** Adding never conflicts; changing conflicts only with a later event on the same tube that touches the same. */
const nothingChangedMeanwhile: Guard = ({ events, command }) => {
  const touches = ruleOf(command.kind).touches;
  const since = events
    .filter((event) => event.seq > command.lastSeen)
    .filter((event) => {
      if (command.amends !== null) return event.amends === command.amends || event.id === command.amends;
      const sameTube = command.tubes.length === 0 || event.tubes.some((id) => command.tubes.includes(id));
      return sameTube && ruleOf(event.kind).touches.some((aspect) => touches.includes(aspect));
    });
  if (since.length === 0) return null;
  return refusal("changed-meanwhile", undefined, { entries: since.map((event) => event.kind).join(", ") });
};

const larger: Guard = ({ state, command }) => {
  if (command.kind !== "upsized") return null;
  const tube = state.tubes.find(({ id }) => id === command.tubes[0]);
  const read = payloads.upsized.safeParse(command.payload);
  if (tube === undefined || !read.success) return null;
  const old = known(tube.size);
  const size = read.data.facts.size === undefined ? undefined : known(read.data.facts.size);
  if (old === undefined || size === undefined || size > old) return null;
  return refusal("upsize-not-larger", "size", { old: printLength(old, "F"), size: printLength(size, "F") });
};

const guards: readonly Guard[] = [amendsKnownEntry, tubesKnown, notInFuture, larger, nothingChangedMeanwhile];

function readPayload({
  events,
  command,
}: Asked): { ok: true; payload: unknown } | { ok: false; refusal: Refusal } {
  const read = payloads[command.kind].safeParse(command.payload);
  if (!read.success)
    return { ok: false, refusal: refusal("entry-not-understood", undefined, { field: fieldOf(read.error) }) };
  const target = events.find((event) => event.id === command.amends);
  if (command.kind === "amended" && target !== undefined) {
    const inner = payloads[target.kind].safeParse(payloads.amended.parse(read.data).payload);
    if (!inner.success)
      return {
        ok: false,
        refusal: refusal("entry-not-understood", undefined, { field: fieldOf(inner.error) }),
      };
    return { ok: true, payload: { ...read.data, payload: inner.data } };
  }
  return { ok: true, payload: read.data };
}

const fieldOf = (error: { readonly issues: readonly { readonly path: readonly PropertyKey[] }[] }): string =>
  error.issues[0]?.path.map(String).join(".") ?? "";

/** Contradictions that the history did not have before. */
const newContradictions = (before: PatientTubes, after: PatientTubes): Refusal[] => {
  const stood = new Set(before.contradictions.map(({ code, eventId }) => `${code} ${eventId}`));
  return after.contradictions
    .filter(({ code, eventId }) => !stood.has(`${code} ${eventId}`))
    .map(({ code }) => refusal(code));
};

/**
 * The events that a command makes of a patient's history, or why it makes none. Guards first, one rule and one code each; then
 * the whole history is folded again, and what would contradict it is refused.
 */
export function decide(events: readonly TubeEvent[], command: Command, now: Now): Decision {
  const state = fold(events);
  const asked: Asked = { events, state, command, now };
  const refusals = guards.map((guard) => guard(asked)).filter((found) => found !== null);
  if (refusals.length > 0) return { ok: false, refusals };
  const read = readPayload(asked);
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
    payload: read.payload,
    recordedOn: now.today,
  };
  const added = event as TubeEvent;
  const next = fold([...events, added]);
  const odd = newContradictions(state, next);
  return odd.length > 0 ? { ok: false, refusals: odd } : { ok: true, events: [added], state: next };
}
