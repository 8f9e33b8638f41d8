import { type Evidence, flagOf } from "#shared/output/alarm/evidence.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import { ofReading } from "#shared/output/alarm/runs.ts";
import { toMl } from "#shared/output/microlitre.ts";
import { netVolume } from "#shared/output/net-volume.ts";
import { flushIsOrdered } from "#shared/output/output-of-tube.ts";
import { feltIn, type Reading, type SessionSymptom } from "#shared/output/reading.ts";

const stops: readonly SessionSymptom[] = ["cough", "pain"];

type Session = { readonly reading: Reading; readonly ml: number | null; readonly before: number | null };

/**
 * Each session with its volume and that of the last one before it that is known: a missed session is no low one. A volume of a session is one
 * whether or not anybody knows when it began.
 */
function sessionsOf({ tube, looked }: Evidence): readonly Session[] {
  let before: number | null = null;
  return looked.map((reading) => {
    const net = netVolume(reading, flushIsOrdered(tube));
    const ml = net.kind === "known" ? toMl(net.ul) : null;
    const session = { reading, ml, before };
    before = ml ?? before;
    return session;
  });
}

function ofSession(evidence: Evidence, { reading, ml, before }: Session): AlarmReason[] {
  const row = evidence.rows.sessions.find(({ kinds }) => kinds.includes(evidence.tube.kind));
  if (row === undefined) return [];
  const flag = flagOf(evidence, "breathless or chest pain");
  const told = ofReading(evidence, reading, { level: null, untilReached: null, source: row.source });
  const reasons: AlarmReason[] = [];
  if (ml !== null && ml > row.ceilingMl)
    reasons.push(told({ code: "session-over-ceiling", args: { ml, over: row.ceilingMl } }));
  const stopped = feltIn(reading).filter((symptom) => stops.includes(symptom));
  if (stopped.length > 0)
    reasons.push(told({ code: "session-symptoms", args: { symptoms: stopped.join(", ") } }));
  if (feltIn(reading).includes("breathlessness") && ml !== null && before !== null && ml < before) {
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
