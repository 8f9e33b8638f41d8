import type { InsteadIf, ThenRecord } from "#shared/protocol/call-rows.ts";

/** What is asked of the patient where a red flag hangs on it and nobody knows. */
export const insteadWords = {
  "immune suppression": "on chemotherapy, or with another immune suppression? Ask.",
  "cord injury at T6 or above": "a spinal cord injury at T6 or above? Ask.",
  "a tube is shut": "is a tube shut? Ask.",
} as const satisfies Record<InsteadIf, string>;

/** What an answer leads on to. */
export const thenRecordWords = {
  output: "Enter the output",
  "tube out": "Record the tube that is out",
  "balloon water": "Record the balloon water",
  "told of the tube": "Record that they were told",
} as const satisfies Record<ThenRecord, string>;
