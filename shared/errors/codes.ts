import { contradictionCodes } from "#shared/tube/contradiction-codes.ts";

/**
 * Every refusal there is: a closed list. A code is its sentence in short; shared/words/refusals.ts must hold a
 * sentence for each, or the build fails.
 */
export const refusalCodes = [
  // days
  "day-not-understood",
  "day-order-unclear",
  "day-in-future",
  "day-does-not-exist",
  "day-missing",
  "day-not-exact",
  "days-reversed",
  "weekday-differs",
  "time-not-understood",
  "time-does-not-exist",
  "closure-ends-before-start",
  "choice-repeated",
  // database files
  "database-missing",
  "database-not-one",
  "database-damaged",
  "database-read-only",
  "database-busy",
  "database-older",
  "database-newer",
  "backup-exists",
  // who may do what
  "sign-in-wrong",
  "sign-in-refused",
  "not-signed-in",
  "session-ended",
  "not-allowed",
  "act-already-used",
  "draft-too-long",
  // accounts and settings
  "user-name-not-understood",
  "user-name-taken",
  "password-too-short",
  "password-too-long",
  "passwords-differ",
  "approver-not-physician",
  "zone-unknown",
  "command-not-understood",
  "clock-not-demo",
  "setting-missing",
  "setting-not-understood",
  // what the web sends
  "request-from-elsewhere",
  "body-too-long",
  // sizes
  "length-not-understood",
  "length-needs-unit",
  "length-absurd",
  "length-not-positive",
  "length-comma-unclear",
  "length-unit-unfit",
  "length-too-fine",
  "gauge-not-listed",
  // volumes
  "volume-missing",
  "volume-not-understood",
  "volume-comma-unclear",
  "volume-needs-unit",
  "volume-negative",
  "volume-absurd",
  "reading-ends-before-start",
  // text
  "text-missing",
  "text-too-long",
  "choice-unknown",
  // recording forms
  "word-unknown",
  "word-unclear",
  "side-differs",
  "plan-not-understood",
  "bores-not-understood",
  "fluids-not-understood",
  "telephone-not-understood",
  "time-missing",
  "tract-after-tube",
  "nothing-said",
  "too-many",
  "amendment-changes-kind",
  // events
  "tube-unknown",
  "entry-unknown",
  "nothing-to-undo",
  "nothing-proposed",
  "entry-not-understood",
  "entry-newer",
  "time-in-future",
  "upsize-not-larger",
  "downsize-not-smaller",
  "reason-missing",
  "changed-meanwhile",
  ...contradictionCodes,
  // patients
  "patient-unknown",
  "number-taken",
  "side-missing",
  "role-missing",
  "mode-missing",
  "no-output",
  // staff
  "steps-still-owned",
  "person-unknown",
  "last-lead",
] as const;

export type RefusalCode = (typeof refusalCodes)[number];
