import type { ThenRecord } from "#shared/protocol/call-rows.ts";

/** Where what an answer leads to is recorded, by the same forms as everywhere; null where it needs a tube and none is meant. */
export function thenRecordHref(then: ThenRecord, patientId: string, tubeId: string | null): string | null {
  if (then === "tube out")
    return `/patients/${patientId}/tube-out${tubeId === null ? "" : `?tube=${tubeId}`}`;
  if (tubeId === null) return null;
  const form = {
    output: "reading",
    "balloon water": "balloon-checked",
    "told of the tube": "told-of-the-tube",
  };
  return `/tubes/${tubeId}/record/${form[then]}`;
}
