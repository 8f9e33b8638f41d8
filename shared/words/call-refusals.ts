import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in a call, a letter, a red flag. */
export const callRefusals = {
  "flag-not-open": () =>
    "What was done about this red flag is recorded already, or its entry was taken back. Look at the patient's page again.",
  "calls-go-on": () =>
    "A record of this patient has not ended, so the calls go on: type the day from which, +14 for two weeks.",
} as const satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
