import { highReasons, lowReasons } from "#shared/output/alarm/day-level.ts";
import { dryReasons } from "#shared/output/alarm/dry.ts";
import { drainsNow, type Evidence, evidenceOf, fullDays } from "#shared/output/alarm/evidence.ts";
import { foundWhileShutReasons } from "#shared/output/alarm/found-while-shut.ts";
import { airLeakReasons, leakReasons } from "#shared/output/alarm/leaks.ts";
import { newFluidReasons } from "#shared/output/alarm/new-fluid.ts";
import type { AlarmInput, AlarmReason } from "#shared/output/alarm/reason.ts";
import { breathlessReasons, sessionReasons } from "#shared/output/alarm/sessions.ts";
import { suddenDropReasons } from "#shared/output/alarm/sudden-drop.ts";

function volumeReasons(evidence: Evidence): AlarmReason[] {
  if (!drainsNow(evidence)) return [];
  const days = fullDays(evidence);
  return [
    ...dryReasons(evidence),
    ...lowReasons(evidence, days),
    ...highReasons(evidence, days),
    ...suddenDropReasons(evidence, days),
  ];
}

const isAnswered = ({ tube }: AlarmInput, { key, at }: AlarmReason): boolean =>
  tube.answered.some((one) => one.key === key && (one.until === null || at <= one.until));

function fromReadings(input: AlarmInput): AlarmReason[] {
  const rows = input.protocol.outputRows;
  if (rows === null || input.readings.length === 0) return [];
  const evidence = evidenceOf(input, rows);
  const sessions = sessionReasons(evidence);
  return [
    ...volumeReasons(evidence),
    ...newFluidReasons(evidence),
    ...sessions,
    ...breathlessReasons(evidence, sessions),
    ...airLeakReasons(evidence),
    ...leakReasons(evidence),
  ];
}

/**
 * Why a tube's readings, and what was found of its patient while it was shut, are an alarm by the clinic's rows, oldest first; empty where no
 * row speaks. Rows alarm, statistics do not. Only what was logged speaks: silence raises nothing, and neither does a day that is not complete.
 * Volumes speak of the tube as it is set now; a fluid, a session, an air leak or a finding of any time stands until somebody has answered it.
 */
export function alarmReasons(input: AlarmInput): readonly AlarmReason[] {
  return [...fromReadings(input), ...foundWhileShutReasons(input)]
    .filter((reason) => !isAnswered(input, reason))
    .toSorted((a, b) => a.at - b.at || (a.key < b.key ? -1 : 1));
}
