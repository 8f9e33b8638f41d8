import { type Evidence, flagOf } from "#shared/output/alarm/evidence.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import { byEmptying, ofReading } from "#shared/output/alarm/runs.ts";
import type { MeasuredInterval } from "#shared/output/measured-interval.ts";
import { toMl } from "#shared/output/microlitre.ts";
import { feltIn, type SessionSymptom } from "#shared/output/reading.ts";

const mlOf = ({ net }: MeasuredInterval): number | null => (net.kind === "known" ? toMl(net.ul) : null);

const stops: readonly SessionSymptom[] = ["cough", "pain"];

type Session = { readonly one: MeasuredInterval; readonly before: number | null };

/** Each session with the volume of the last one before it that is known: a missed session is no low one. */
function sessionsOf({ intervals }: Evidence): readonly Session[] {
  let before: number | null = null;
  return intervals
    .toSorted((a, b) => byEmptying(a.reading, b.reading))
    .map((one) => {
      const session = { one, before };
      before = mlOf(one) ?? before;
      return session;
    });
}

function ofSession(evidence: Evidence, { one, before }: Session): AlarmReason[] {
  const row = evidence.rows.sessions.find(({ kinds }) => kinds.includes(evidence.tube.kind));
  if (row === undefined) return [];
  const flag = flagOf(evidence, "breathless or chest pain");
  const ml = mlOf(one);
  const told = ofReading(evidence, one.reading, { level: null, untilReached: null, source: row.source });
  const reasons: AlarmReason[] = [];
  if (ml !== null && ml > row.ceilingMl)
    reasons.push(told({ code: "session-over-ceiling", args: { ml, over: row.ceilingMl } }));
  const stopped = feltIn(one.reading).filter((symptom) => stops.includes(symptom));
  if (stopped.length > 0)
    reasons.push(told({ code: "session-symptoms", args: { symptoms: stopped.join(", ") } }));
  if (feltIn(one.reading).includes("breathlessness") && ml !== null && before !== null && ml < before) {
    const { level = null, untilReached = null } = flag ?? {};
    const args = { ml, before };
    reasons.push({ ...told({ code: "session-falling", args }), level, untilReached });
  }
  return reasons;
}

/** Sessions of a tube that is drained now and then: too much at once, what was felt, less while breath is short. */
export const sessionReasons = (evidence: Evidence): AlarmReason[] =>
  sessionsOf(evidence).flatMap((session) => ofSession(evidence, session));

/** Breath that is short with any tube is a red flag of its own, unless the row of sessions has spoken. */
export function breathlessReasons(evidence: Evidence, spoken: readonly AlarmReason[]): AlarmReason[] {
  const flag = flagOf(evidence, "breathless or chest pain");
  if (flag === undefined) return [];
  const falling = spoken.filter(({ code }) => code === "session-falling").flatMap(({ readings }) => readings);
  return evidence.looked
    .filter((reading) => feltIn(reading).includes("breathlessness") && !falling.includes(reading.id))
    .map((reading) => ofReading(evidence, reading, flag)({ code: "breathless", args: {} }));
}
