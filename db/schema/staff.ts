import { sql } from "drizzle-orm";
import { check, index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { areFilled, areFlags, flag, id, instant, isOneOf } from "#db/schema/columns.ts";
import { type StaffRole, staffRoles } from "#shared/access/roles.ts";

/** Named accounts. A closed account keeps its row: events point to it. */
export const staff = sqliteTable(
  "staff",
  {
    id: id("id").primaryKey(),
    userName: text("user_name").notNull().unique(),
    fullName: text("full_name").notNull(),
    role: text("role").$type<StaffRole>().notNull(),
    isApprover: flag("is_approver").notNull(),
    passwordHash: text("password_hash").notNull(),
    createdAt: instant("created_at").notNull(),
    closedAt: instant("closed_at"),
  },
  (t) => [
    check("staff_role_known", isOneOf(t.role, staffRoles)),
    check("staff_approver_is_physician", sql`${t.isApprover} = 0 or ${t.role} = 'physician'`),
    check("staff_user_name_lower", sql`${t.userName} = lower(${t.userName})`),
    ...areFilled("staff", t.userName, t.fullName),
    ...areFlags("staff", t.isApprover),
  ],
);

/** Signed-in browsers. The token itself is only in the cookie; this is its SHA-256. */
export const sessions = sqliteTable(
  "sessions",
  {
    tokenHash: text("token_hash").primaryKey(),
    staffId: id("staff_id")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
    createdAt: instant("created_at").notNull(),
    lastSeenAt: instant("last_seen_at").notNull(),
    endsAt: instant("ends_at").notNull(),
  },
  (t) => [
    check("sessions_end_after_start", sql`${t.endsAt} > ${t.createdAt}`),
    // query: sweep of sessions that are over
    index("sessions_ends_at").on(t.endsAt),
  ],
);

/** Wrong sign-ins, counted per account (`account:...`) and per address (`address:...`). Never a permanent lock-out. */
export const signInRefusals = sqliteTable(
  "sign_in_refusals",
  {
    key: text("key").primaryKey(),
    failures: integer("failures").notNull(),
    lastFailureAt: instant("last_failure_at").notNull(),
    refusedUntil: instant("refused_until"),
  },
  (t) => [
    check("sign_in_refusals_key_known", sql`${t.key} like 'account:%' or ${t.key} like 'address:%'`),
    check("sign_in_refusals_failures_counted", sql`${t.failures} > 0`),
  ],
);
