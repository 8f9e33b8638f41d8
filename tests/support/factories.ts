import { day, lastOfMonth } from "#shared/day/day.ts";
import { onDay, type When, whenUnknown } from "#shared/day/when.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import type { Length } from "#shared/size/length.ts";
import { confirmed, type Fact, unknownFact } from "#shared/tube/certainty.ts";
import type { EventOf, Pins } from "#shared/tube/event.ts";
import { ruleOf } from "#shared/tube/event-kinds.ts";
import { kindOf, type TubeKind } from "#shared/tube/kind/kinds.ts";
import type { EventKind, Opening, OperatorPlan, Payload, Renewal } from "#shared/tube/payloads.ts";
import type { Side } from "#shared/tube/vocabulary.ts";
import { fluidResult } from "#tests/factories/fluid-test.ts";

/**
 * One word for each kind of event, with everything left out filled in plainly: `placed({ on: "2026-08-14", size: F(8) })`. What a
 * word makes has no place in a stream yet; `history(...)` gives it one, `command(...)` asks for one. Nothing here is random.
 */

export const F = (figure: number): Length => lengthOf(figure, "F");
export const inch = (figure: number): Length => lengthOf(figure, "in");

/** A day, a month "2026-03", a span "2026-03-10..2026-03-31", or "?" for unknown. */
export function when(text: string): When {
  if (text === "?") return whenUnknown;
  const [from = "", to] = text.split("..");
  const [year = "", month = "", date] = from.split("-");
  if (date === undefined)
    return { precision: "month", earliest: day(`${from}-01`), latest: lastOfMonth(+year, +month) };
  if (to === undefined) return onDay(day(from));
  return { precision: "span", earliest: day(from), latest: day(to) };
}

/** What any entry may say of itself; left out: Fri 14 Aug 2026, tube "tube-1", recorded on its last possible day. */
export type Said = {
  readonly id?: string;
  readonly on?: string;
  readonly at?: string;
  readonly tube?: string;
  readonly order?: number;
  readonly recordedOn?: string;
  readonly pins?: Pins | null;
};

/** An entry without its place in a stream. */
export type Entry = {
  [K in EventKind]: Omit<EventOf<K>, "seq" | "id"> & { readonly id?: string };
}[EventKind];

export const DAY = "2026-08-14";
export const PINS: Pins = { protocol: 1, calendar: 1 };

type Told = { readonly tubes?: readonly string[]; readonly amends?: string };

export function tell<K extends EventKind>(
  kind: K,
  payload: Payload<K>,
  { id, on = DAY, at, tube = "tube-1", order = 0, recordedOn, pins, tubes, amends }: Said & Told,
): Entry {
  const happened = when(on);
  const rule = ruleOf(kind);
  return {
    id,
    kind,
    payload,
    when: happened,
    time: at ?? null,
    daySequence: order,
    recordedOn: day(recordedOn ?? happened.latest ?? DAY),
    tubes: tubes ?? (rule.tubes === 0 ? [] : [tube]),
    pins: pins === undefined ? (rule.pins ? PINS : null) : pins,
    amends: amends ?? null,
  } as Entry;
}

/** Takes what an entry says of itself, where it says it, out of what was said; the rest is its payload. */
export function apart<T extends Said>(said: T): { of: Said; rest: Omit<T, keyof Said> } {
  const { id, on, at, tube, order, recordedOn, pins, ...rest } = said;
  // As JSON, which holds nothing that was left out.
  return { of: JSON.parse(JSON.stringify({ id, on, at, tube, order, recordedOn, pins })) as Said, rest };
}

/** A word whose payload has plain defaults. */
const word =
  <K extends EventKind>(kind: K, defaults: Payload<K>) =>
  (said: Said & Partial<Payload<K>> = {}): Entry => {
    const { of, rest } = apart(said);
    return tell(kind, { ...defaults, ...rest } as Payload<K>, of);
  };

type Plan = Pick<OperatorPlan, "act"> & { by: string; byWhom?: string; reason?: string };

export const plan = ({ act, by, byWhom, reason }: Plan): OperatorPlan => ({
  act,
  by: day(by),
  byWhom: byWhom ?? null,
  reason: reason ?? null,
});

/** Shorthands of a tube's facts: a plain value is confirmed. */
type Short = { readonly size?: Length | Fact<Length>; readonly plan?: Plan | null };
type Opens = Said & Short & { readonly side?: Side | Fact<Side> } & Partial<Omit<Opening, "side" | "plan">>;
type Renews = Said & Short & Partial<Omit<Renewal, "plan">>;

const asFact = <T>(value: T | Fact<T>): Fact<T> =>
  typeof value === "object" && value !== null && "certainty" in value ? value : confirmed(value as T);

const facts = ({ size, facts: said }: Short & { readonly facts?: Opening["facts"] }): Opening["facts"] => ({
  ...said,
  ...(size !== undefined && { size: asFact(size) }),
});

/** A left nephrostomy, 8 F, unless said otherwise. */
export function opening(said: Opens = {}): Opening {
  const { size = F(8), side = "left", plan: by, facts: more, ...rest } = apart(said).rest;
  const kind: TubeKind = rest.kind ?? "nephrostomy";
  const { role, mode, organ } = kindOf(kind);
  const plain = { route: null, cavity: null, indication: null, cancerObstruction: unknownFact };
  return {
    kind,
    // A kind without a usual role or mode has them asked; a factory answers.
    role: role ?? "drains an organ",
    mode: mode ?? "to bag",
    organ,
    number: 1,
    ...plain,
    side: asFact<Side>(side),
    facts: facts({ size, facts: more }),
    plan: by == null ? null : plan(by),
    ...rest,
  };
}

const renewal = (said: Renews): Renewal => {
  const { size, plan: by, facts: more, ...rest } = apart(said).rest;
  const plain = { elsewhere: null, difficult: false, note: null };
  return { ...plain, facts: facts({ size, facts: more }), plan: by == null ? null : plan(by), ...rest };
};

const renewing =
  (kind: "exchanged" | "upsized" | "downsized" | "salvaged" | "new puncture") =>
  (said: Renews = {}): Entry =>
    tell(kind, renewal(said), apart(said).of);

export const placed = (said: Opens = {}): Entry => tell("placed", opening(said), apart(said).of);

export const takenOver = ({
  from = null,
  tractSince = "?",
  ...said
}: Opens & { from?: string | null; tractSince?: string } = {}): Entry =>
  tell("taken over", { ...opening(said), from, tractSince: when(tractSince) }, apart(said).of);

export const exchanged = renewing("exchanged");
export const upsized = renewing("upsized");
export const downsized = renewing("downsized");
export const salvaged = renewing("salvaged");
export const newPuncture = renewing("new puncture");

export const checked = word("checked", { study: null, finding: null, concerns: [] });
export const capped = word("capped", { covers: null, bagAtHome: unknownFact });
export const uncapped = word("uncapped", { mode: "to bag" });
export const tipPosition = word("tip position", { inPlace: confirmed(true), where: null });
export const partlyDislodged = word("partly dislodged", { externalLength: unknownFact, note: null });
export const fellOut = word("fell out", { whole: confirmed(true), note: null });
export const notReplaced = word("not replaced", {
  decidedBy: "Dr. Orla Invented",
  reason: "no longer needed",
});
export const removed = word("removed", {
  whole: confirmed(true),
  loopReleased: confirmed(true),
  seenHow: "on the table",
  byWhom: "Dr. Orla Invented",
  toldBy: null,
});
export const died = word("died", { toldBy: null });
export const factsNoted = word("facts noted", { facts: {}, note: null });
export const verified = word("verified", { how: "letter read" });
export const conditionsNoted = word("conditions noted", { conditions: {} });
export const stepAssigned = word("step assigned", { step: "exchange", owner: { role: "physician" } });
export const called = word("called", { outcome: "reached the patient", note: null });
export const datesConfirmed = word("dates confirmed", { note: null });

export const repositioned = word("repositioned", { externalLength: unknownFact, seenHow: null, note: null });
export const flushed = word("flushed", {
  given: unknownFact,
  went: "easily",
  cameBack: confirmed(true),
  note: null,
});
export const unblocked = word("unblocked", { how: null, note: null });
export const trialStarted = word("clamp trial started", { covers: null, bagAtHome: unknownFact, note: null });
export const trialPassed = word("clamp trial passed", { mode: "capped", note: null });
export const trialFailed = word("clamp trial failed", { mode: "to bag", note: null });
export const suctionChanged = word("suction changed", { mode: "to suction", pressure: null, note: null });
export const balloonChecked = word("balloon checked", {
  found: confirmed(10),
  refilled: confirmed(10),
  note: null,
});
export const anchorsRemoved = word("anchors removed", { what: "2 anchors", note: null });
export const blocked = word("blocked", { note: null });
export const leaking = word("leaking", { soaking: confirmed(false), note: null });
export const infected = word("infected", { fever: confirmed(false), note: null });
export const bled = word("bled", { heavy: confirmed(false), note: null });
export const broken = word("broken", { fragmentInside: confirmed(false), part: null, note: null });
export const fluidTested = word("fluid tested", { results: [fluidResult()], serumOn: null, note: null });
export const handedOver = word("handed over", { to: "the urology service", person: null, note: null });
export const acceptedElsewhere = word("accepted elsewhere", {
  by: "Dr. Orla Invented",
  place: null,
  how: null,
});
export const followUpEnded = word("follow-up ended", {
  decidedBy: "Dr. Orla Invented",
  reason: "the piece stays",
});
const unkinked = { done: "unkinked", by: "Dr. Orla Invented", note: null } as const;
export const alarmClosed = word("alarm closed", { answers: [{ key: "dry:r1", until: null }], ...unkinked });
export const transferred = word("transferred", {
  place: "Far Dale General",
  findOut: [],
  askWhom: null,
  note: null,
});
export const whereaboutsNoted = word("whereabouts noted", { place: "inpatient", where: null, note: null });
export const clinicalStateNoted = word("clinical state noted", {
  findings: {
    temperature: confirmed({ value: 36.8, asTyped: null }),
    chills: confirmed(false),
  },
  note: null,
});
export const reconcileAsked = word("reconcile asked", {
  about: "sides",
  says: "the report says right, the record left",
});
export const reportedOut = word("reported out", {
  candidates: [
    { tube: "tube-1", number: 1 },
    { tube: "tube-2", number: 2 },
  ],
  toldBy: "urology",
  note: null,
});
export const recordsJoined = word("records joined", {
  from: "patient-2",
  offset: 0,
  numbers: [],
  how: "the same telephone",
});
export const reconciled = word("reconciled", { about: "sides", how: "films looked at", sides: [] });

type Decided = Partial<Omit<Payload<"removal decided">, "by">> & { readonly by?: string };

export const removalDecided = ({ by = "2026-09-01", ...said }: Said & Decided = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { decidedBy: "Dr. Orla Invented", owner: { role: "nurse" as const }, reason: null };
  return tell("removal decided", { ...plain, ...rest, by: day(by) }, of);
};

type Usual = Partial<Omit<Payload<"usual level accepted">, "until">> & { readonly until?: string };

export const usualAccepted = ({ until = "2026-12-31", ...said }: Said & Usual = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { row: "low" as const, mlPer24h: 60, acceptedBy: "Dr. Orla Invented", note: null };
  return tell("usual level accepted", { ...plain, ...rest, until: day(until) }, of);
};

type Hospice = Partial<Omit<Payload<"hospice decided">, "until">> & { readonly until?: string };

export const hospiceDecided = ({ until = "2026-12-31", ...said }: Said & Hospice = {}): Entry => {
  const { of, rest } = apart(said);
  const plain = { decidedBy: "Dr. Orla Invented", team: null, note: null };
  const stops = { calls: "stop" as const, exchanges: "stop" as const };
  return tell("hospice decided", { ...plain, ...stops, ...rest, until: day(until) }, of);
};

export const clockDated = ({
  since,
  tractSince,
  ...said
}: Said & { since: string; tractSince?: string }): Entry => {
  const tract = tractSince === undefined ? null : when(tractSince);
  return tell("clock dated", { catheterSince: when(since), tractSince: tract, how: null }, said);
};

export const planRecorded = (said: Said & Plan): Entry =>
  tell("plan recorded", { plan: plan(said) }, apart(said).of);

export const exchangePlanned = ({ planned, ...said }: Said & { planned?: string } = {}): Entry => {
  const of = planned === undefined ? null : day(planned);
  const tube = { kind: "nephrostomy", size: confirmed(F(8)), takes: unknownFact } as const;
  return tell("exchange planned", { on: of, ...tube, wire: confirmed(inch(0.035)), seen: [] }, said);
};

/** Closes "tube-1" and opens "tube-2", number 2, unless said otherwise. */
export const converted = ({
  closes = "tube-1",
  opens = "tube-2",
  ...said
}: Opens & { closes?: string; opens?: string } = {}): Entry =>
  tell(
    "converted",
    { closes, opens, opening: opening({ kind: "nephroureteral catheter", number: 2, ...said }) },
    { ...apart(said).of, tubes: [closes, opens] },
  );

/** Puts another entry in the place of one: `amended("wrong", exchanged({ on: "2026-08-10" }))`. */
export const amended = (amends: string, by: Entry, said: Said & { reason?: string } = {}): Entry => {
  const { reason = "typed wrongly", ...of } = said;
  const payload = { reason, when: by.when, time: by.time, payload: by.payload };
  return tell("amended", payload, { ...of, amends });
};

export const voided = (amends: string, said: Said & { wrongPatient?: boolean } = {}): Entry => {
  const { wrongPatient = false, ...of } = said;
  return tell("voided", { reason: "never happened", wrongPatient }, { ...of, amends });
};
