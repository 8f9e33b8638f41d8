import { sqliteTable } from "drizzle-orm/sqlite-core";
import { id, instant } from "#db/schema/columns.ts";
import { patients } from "#db/schema/patients.ts";
import { staff } from "#db/schema/staff.ts";

/** Who rings a patient now, so that two never do at once. Nothing of the record: a hold ends with the call, or is forgotten. */
export const callHolds = sqliteTable("call_holds", {
  patientId: id("patient_id")
    .primaryKey()
    .references(() => patients.id, { onDelete: "restrict" }),
  staffId: id("staff_id")
    .notNull()
    .references(() => staff.id, { onDelete: "restrict" }),
  /** By the machine's clock. */
  sinceAt: instant("since_at").notNull(),
});
