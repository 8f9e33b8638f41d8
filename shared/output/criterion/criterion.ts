import type { FindingName } from "#shared/clinical/findings-schema.ts";
import type { Day } from "#shared/day/day.ts";
import type { Instant } from "#shared/day/instant.ts";
import type { When } from "#shared/day/when.ts";
import type { Plateau } from "#shared/output/criterion/plateau.ts";
import type { DayRemark, IncompleteReason } from "#shared/output/net-day.ts";
import type { UnknownNetReason } from "#shared/output/net-volume.ts";
import type { SessionSymptom } from "#shared/output/reading.ts";
import type { EventKind } from "#shared/tube/payloads.ts";
import type { Status } from "#shared/tube/state.ts";
import type { ImagingFinding, Mode, Role, TroubleKind } from "#shared/tube/vocabulary.ts";

/** Why a day, or a session, is not known to be low. */
export type DayFault = IncompleteReason | DayRemark;
export type SessionFault =
  | UnknownNetReason
  | Extract<DayRemark, "estimated" | "leak-round-tube">
  | "symptoms-not-recorded";

/** Rows that a table may lack. */
export type LackingRow =
  | "for a child"
  | "for this kind"
  | "age of the last complete day"
  | "age of the clinical state"
  | "fever";

/**
 * Why a verdict is what it is, as data: a closed list. `tube` is the number of another tube of the same cavity, null where the tube itself
 * is meant. Volumes are mL, rates mL/24 h, ages hours.
 */
export type CriterionReason =
  // does not apply
  | { readonly code: "never-by-volume"; readonly role: Role }
  | { readonly code: "shut"; readonly mode: Mode }
  | { readonly code: "not-in"; readonly status: Status }
  // no row
  | { readonly code: "no-row"; readonly of: LackingRow }
  // the count of days or sessions
  | {
      readonly code: "too-few-days" | "too-few-sessions";
      readonly since: { readonly what: EventKind; readonly when: When } | null;
      readonly tube: number | null;
      readonly count: number;
      readonly needed: number;
    }
  | { readonly code: "no-complete-day" | "no-session" }
  | { readonly code: "last-day-too-old"; readonly day: Day; readonly hours: number }
  | { readonly code: "last-session-too-old"; readonly at: Instant; readonly hours: number }
  // days
  | { readonly code: "day-low"; readonly day: Day; readonly mlPer24h: number; readonly underMl: number }
  | { readonly code: "day-not-low"; readonly day: Day; readonly mlPer24h: number; readonly underMl: number }
  | { readonly code: "day-unknown"; readonly day: Day; readonly faults: readonly DayFault[] }
  | { readonly code: "change-undated"; readonly day: Day }
  | { readonly code: "later-reading-unknown"; readonly day: Day; readonly faults: readonly DayFault[] }
  | { readonly code: "later-reading-over"; readonly day: Day; readonly ml: number; readonly underMl: number }
  // sessions
  | { readonly code: "session-low"; readonly at: Instant; readonly ml: number; readonly underMl: number }
  | { readonly code: "session-not-low"; readonly at: Instant; readonly ml: number; readonly underMl: number }
  | { readonly code: "session-unknown"; readonly at: Instant; readonly faults: readonly SessionFault[] }
  | { readonly code: "session-symptoms"; readonly at: Instant; readonly symptoms: readonly SessionSymptom[] }
  | { readonly code: "cough-or-breathlessness"; readonly when: When }
  // the tube and the patient
  | { readonly code: "trouble"; readonly trouble: TroubleKind; readonly tube: number | null }
  | { readonly code: "cavity-not-recorded"; readonly tubes: readonly number[] }
  | { readonly code: "clinical-unknown"; readonly item: FindingName }
  | {
      readonly code: "clinical-too-old";
      readonly item: FindingName;
      readonly when: When;
      readonly hours: number;
    }
  | { readonly code: "fever"; readonly celsius: number; readonly when: When }
  | { readonly code: "shaking-chills" | "feels-very-unwell"; readonly when: When }
  | { readonly code: "imaging-against"; readonly finding: ImagingFinding; readonly day: Day }
  // a chest tube
  | { readonly code: "air-leak"; readonly at: Instant }
  | { readonly code: "air-leak-not-recorded"; readonly hours: number }
  | { readonly code: "no-film" }
  | { readonly code: "film-too-old"; readonly day: Day; readonly hours: number }
  | { readonly code: "lung-not-up"; readonly day: Day };

/** What stands beside a verdict and is not mixed into it. */
export type BesideReason =
  | { readonly code: "cavity-sum"; readonly tubes: readonly number[] }
  | { readonly code: "cavity-shut"; readonly tubes: readonly number[] }
  | { readonly code: "tract-too-young"; readonly until: Day; readonly days: number }
  | { readonly code: "tract-age-unknown"; readonly days: number }
  | ({ readonly code: "plateau" } & Plateau)
  | { readonly code: "readings-not-placed"; readonly count: number };

export type CriterionKind = "numeric part met" | "not met" | "cannot tell" | "does not apply";

/** The row that it was held against. `running`: days or sessions one after another. */
export type CriterionRow = (
  | { readonly what: "net days" | "sessions" }
  | { readonly what: "chest tube"; readonly noAirLeakHours: number }
) & {
  readonly underMl: number;
  readonly running: number;
  readonly source: string;
  readonly version: number;
  readonly approved: boolean;
};

export type EvidenceDay = {
  readonly day: Day;
  readonly state: "low" | "not low" | "cannot tell";
  readonly mlPer24h: number | null;
};
export type EvidenceSession = {
  readonly at: Instant;
  readonly state: "low" | "not low" | "cannot tell";
  readonly ml: number | null;
};

/** What it was computed from, by ids, so that a decision can keep what was seen. */
export type CriterionEvidence = {
  readonly days: readonly EvidenceDay[];
  readonly sessions: readonly EvidenceSession[];
  readonly readings: readonly string[];
  readonly events: readonly string[];
};

/** The clinic's criterion for one tube. `because` has the first reason first; it is never empty. */
export type Criterion = {
  readonly kind: CriterionKind;
  readonly because: readonly CriterionReason[];
  readonly beside: readonly BesideReason[];
  readonly row: CriterionRow | null;
  readonly evidence: CriterionEvidence;
};

/** What one part of a criterion says: what disproves it whatever is not known, what cannot be told, and what speaks for it. */
export type Weighed = {
  readonly against: readonly CriterionReason[];
  readonly unknown: readonly CriterionReason[];
  readonly forIt: readonly CriterionReason[];
  readonly evidence: CriterionEvidence;
};
