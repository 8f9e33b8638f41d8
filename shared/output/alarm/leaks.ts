import { type Evidence, flagOf, isShut } from "#shared/output/alarm/evidence.ts";
import type { AlarmReason } from "#shared/output/alarm/reason.ts";
import { firstOfRuns, ofReading, type Says } from "#shared/output/alarm/runs.ts";
import { feltIn, type Reading } from "#shared/output/reading.ts";

/** A chest tube that had none and now leaks air. What leaked from the first is no change. */
export function airLeakReasons(evidence: Evidence): AlarmReason[] {
  const row = evidence.rows.chestTube;
  if (!row?.kinds.includes(evidence.tube.kind)) return [];
  const seen = evidence.looked.filter(({ airLeak }) => airLeak !== "not recorded");
  return seen
    .filter(({ airLeak }, index) => airLeak === "present" && seen[index - 1]?.airLeak === "none")
    .map((reading) =>
      ofReading(evidence, reading, { level: null, untilReached: null, source: row.source })({
        code: "air-leak",
        args: {},
      }),
    );
}

const soaks = ({ leak }: Reading): Says =>
  leak === "not recorded" ? "nothing said" : leak === "soaking" ? "yes" : "no";
const leaks = ({ leak }: Reading): Says =>
  leak === "not recorded" ? "nothing said" : leak === "none" ? "no" : "yes";
const feels = ({ symptoms }: Reading): Says =>
  symptoms === "not recorded" ? "nothing said" : symptoms.length === 0 ? "no" : "yes";

/** A leak that soaks, and of a shut tube any leak and what is felt. Of the tube as it is set now. */
export function leakReasons(evidence: Evidence): AlarmReason[] {
  const { since } = evidence;
  const flag = flagOf(evidence, isShut(evidence) ? "trial with symptoms" : "soaking leak");
  if (flag === undefined) return [];
  const own = evidence.looked.filter(({ to }) => since === null || to > since);
  const each = (says: (reading: Reading) => Says) => firstOfRuns(own, says);
  if (!isShut(evidence))
    return each(soaks).map((reading) =>
      ofReading(evidence, reading, flag)({ code: "soaking-leak", args: {} }),
    );
  const leaking = each(leaks).map((reading) =>
    ofReading(evidence, reading, flag)({ code: "leak-while-shut", args: { leak: reading.leak } }),
  );
  const felt = each(feels).map((reading) =>
    ofReading(
      evidence,
      reading,
      flag,
    )({
      code: "symptoms-while-shut",
      args: { symptoms: feltIn(reading).join(", ") },
    }),
  );
  return [...leaking, ...felt];
}
