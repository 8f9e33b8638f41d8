import type { ClinicCalendar } from "#shared/day/clinic-days.ts";
import { day } from "#shared/day/day.ts";
import type { PrerequisiteRow } from "#shared/protocol/visit-rows.ts";
import { openWeeks } from "#tests/factories/visit.ts";

/** Labs before an exchange of any tube, settled two working days before. */
export const prerequisiteRow = (said: Partial<PrerequisiteRow>): PrerequisiteRow => ({
  thing: "labs",
  acts: ["exchange"],
  kinds: [],
  workingDaysBefore: 2,
  leadHours: null,
  says: "which",
  source: "CP",
  ...said,
});

/** A version of the table with these rows and no other. */
export const prerequisiteTable = (...prerequisites: readonly PrerequisiteRow[]) => ({
  visits: { prerequisites: [...prerequisites], confirmed: null },
});

/** Shut from Christmas Eve over the weekend after New Year. */
export const christmas: ClinicCalendar = {
  ...openWeeks,
  closures: [{ from: day("2026-12-24"), to: day("2027-01-03"), reason: "Christmas" }],
};

export const things = (asked: readonly { readonly thing: string }[]) => asked.map(({ thing }) => thing);
