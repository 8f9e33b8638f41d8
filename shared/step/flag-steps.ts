import type { OpenFlag } from "#shared/call/red-flag.ts";
import { addDays } from "#shared/day/day.ts";
import { dueOn, NO_PINS, why } from "#shared/step/draft.ts";
import { defaultOwner, type OpenStep } from "#shared/step/step.ts";
import type { PatientTubes } from "#shared/tube/state.ts";

function flagStep(flag: OpenFlag, { tubes }: Pick<PatientTubes, "tubes">): OpenStep {
  const { id, level, says, untilReached, tubeId, recordedOn, handed } = flag;
  const tube = tubes.find((one) => one.id === tubeId);
  const pins = tube?.pins ?? tubes.find(({ status }) => status !== "ended")?.pins ?? NO_PINS;
  const raised = why("red-flag", { level, says, untilReached }, id);
  const lines =
    handed === null
      ? [raised, why("flag-not-handed")]
      : [
          raised,
          why("flag-handed", { to: handed.to, day: handed.when.latest, at: handed.time }, handed.eventId),
        ];
  return {
    id: `${id}:red flag`,
    tubeId: tube?.id ?? null,
    kind: "red flag",
    ...dueOn(recordedOn),
    dueOn: recordedOn,
    provisional: false,
    owner: { role: handed === null ? defaultOwner["red flag"] : "physician", staffId: null },
    ownerFrom: recordedOn,
    escalatesOn: recordedOn,
    physicianOn: addDays(recordedOn, 1),
    why: lines,
    pins,
  };
}

/** Each red flag that was told, until somebody records what was done: also of records that have ended, and whether or not somebody has it. */
export const flagSteps = (patient: Pick<PatientTubes, "redFlags" | "tubes">): OpenStep[] =>
  patient.redFlags.map((flag) => flagStep(flag, patient));
