import { sql } from "drizzle-orm";
import { check, index, integer, sqliteTable, text } from "drizzle-orm/sqlite-core";
import { areDays, areFlags, areJson, dayText, flag, id, instant, isOneOf, json } from "#db/schema/columns.ts";
import { events } from "#db/schema/events.ts";
import { patients } from "#db/schema/patients.ts";
import { staff } from "#db/schema/staff.ts";
import { calendarVersions, protocolVersions } from "#db/schema/versions.ts";
import { type StaffRole, staffRoles } from "#shared/access/roles.ts";
import type { Span } from "#shared/call/best-times.ts";
import type { CallStory } from "#shared/call/call-line.ts";
import type { Zone } from "#shared/day/instant.ts";
import { type DayPart, dayParts } from "#shared/protocol/call-rows.ts";
import type { Length } from "#shared/size/length.ts";
import type { ListRank } from "#shared/step/list-rank.ts";
import { type Visit, type VisitState, visitStates } from "#shared/visit/visit.ts";

/** Projection: one row a tube, computed from its patient's events and written again with each of them. */
export const tubes = sqliteTable(
  "tubes",
  {
    id: id("id").primaryKey(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    kind: text("kind").notNull(),
    role: text("role").notNull(),
    side: text("side"),
    status: text("status").notNull(),
    /** As shown: "Left nephrostomy, 8 F, locking loop". */
    name: text("name").notNull(),
    /** Outer diameter in 1/1500 um; null when unknown. */
    sizeUnits: integer("size_units").$type<Length>(),
    /** Ends of the day on which the catheter's clock began. */
    clockEarliest: dayText("clock_earliest"),
    clockLatest: dayText("clock_latest"),
    /** Day of the planned exchange, while one is planned. */
    plannedOn: dayText("planned_on"),
    /** Why its output asks for a review before its day (shared/review/output-asks.ts). */
    metUntil: instant("met_until"),
    plateauSince: dayText("plateau_since"),
    /** Before what is long: to read it a list need not read past that. */
    rulesVersion: integer("rules_version").notNull(),
    /** What the dwell strip draws. */
    strip: json("strip").notNull(),
    state: json("state").notNull(),
  },
  (t) => [
    check("tubes_clock_in_order", sql`${t.clockEarliest} <= ${t.clockLatest}`),
    check("tubes_size_positive", sql`${t.sizeUnits} > 0`),
    ...areDays("tubes", t.clockEarliest, t.clockLatest, t.plannedOn, t.plateauSince),
    ...areJson("tubes", t.strip, t.state),
    // query: tubes of one patient
    index("tubes_by_patient").on(t.patientId, t.id),
    // query: tubes by status (in place; out and undecided)
    index("tubes_by_status").on(t.status, t.id),
    // query: tubes of a kind, side or role, and whose they are (filters of lists); rows themselves are long
    index("tubes_by_what_they_are").on(t.kind, t.side, t.role, t.status, t.patientId, t.id),
    // query: tubes whose output asks for a review now, and those of older rules, of which that is not computed; rows themselves are long
    index("tubes_by_what_output_asks").on(t.rulesVersion, t.metUntil, t.plateauSince, t.role, t.id),
    // query: exchanges planned for a day
    index("tubes_by_planned_day").on(t.plannedOn, t.id),
  ],
);

/** Projection: a patient's tubes in short and what is known beside them, so that what other rows would ask of everybody is computed without the events. */
export const patientStates = sqliteTable(
  "patient_states",
  {
    patientId: id("patient_id")
      .primaryKey()
      .references(() => patients.id, { onDelete: "restrict" }),
    state: json("state").notNull(),
    rulesVersion: integer("rules_version").notNull(),
  },
  (t) => [...areJson("patient_states", t.state)],
);

/** Projection: what comes next, when, and whose it is. Today is never stored: queries compare these days with it. */
export const openSteps = sqliteTable(
  "open_steps",
  {
    /** Made from patient, tube and kind, so that a rebuild gives the same id. */
    id: id("id").primaryKey(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    tubeId: id("tube_id").references(() => tubes.id, { onDelete: "restrict" }),
    kind: text("kind").notNull(),
    /** In which part of the lists it stands (shared/step/list-rank.ts). */
    rank: integer("rank").$type<ListRank>().notNull(),
    earliestOn: dayText("earliest_on"),
    targetOn: dayText("target_on"),
    latestOn: dayText("latest_on"),
    /** The day by which lists sort. */
    dueOn: dayText("due_on").notNull(),
    provisional: flag("provisional").notNull(),
    ownerRole: text("owner_role").$type<StaffRole>().notNull(),
    ownerStaffId: id("owner_staff_id").references(() => staff.id, { onDelete: "restrict" }),
    ownerFrom: dayText("owner_from"),
    escalatesOn: dayText("escalates_on"),
    physicianOn: dayText("physician_on"),
    why: json("why").notNull(),
    pinsProtocol: integer("pins_protocol").references(() => protocolVersions.version, {
      onDelete: "restrict",
    }),
    pinsCalendar: integer("pins_calendar").references(() => calendarVersions.version, {
      onDelete: "restrict",
    }),
    rulesVersion: integer("rules_version").notNull(),
  },
  (t) => [
    check("open_steps_owner_role_known", isOneOf(t.ownerRole, staffRoles)),
    ...areDays(
      "open_steps",
      t.earliestOn,
      t.targetOn,
      t.latestOn,
      t.dueOn,
      t.ownerFrom,
      t.escalatesOn,
      t.physicianOn,
    ),
    ...areFlags("open_steps", t.provisional),
    ...areJson("open_steps", t.why),
    // query: due list, and every other part of the lists
    index("open_steps_due_list").on(t.rank, t.dueOn, t.id),
    // query: past latest
    index("open_steps_past_latest").on(t.rank, t.latestOn, t.id),
    // query: open steps of one patient
    index("open_steps_by_patient").on(t.patientId, t.dueOn, t.rank, t.id),
    // query: open steps of one tube
    index("open_steps_by_tube").on(t.tubeId, t.dueOn, t.rank, t.id),
    // query: alarms, and reviews by their day (the physician's queue)
    index("open_steps_by_kind").on(t.kind, t.dueOn, t.id),
    // query: steps of one person (before an account closes)
    index("open_steps_by_owner").on(t.ownerStaffId),
  ],
);

/** Projection: every visit that was booked, with what a list, a day and the rooms' time ask of it. */
export const visits = sqliteTable(
  "visits",
  {
    /** That of the entry that booked it. */
    id: id("id").primaryKey(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    state: text("state").$type<VisitState>().notNull(),
    visitOn: dayText("visit_on").notNull(),
    /** Null of one that is booked elsewhere. */
    roomId: text("room_id"),
    /** Minutes after midnight by the clinic's clock, and of the room's time. */
    fromMinute: integer("from_minute"),
    minutes: integer("minutes"),
    /** Nobody else can have that time of the room. */
    takesRoom: flag("takes_room").notNull(),
    urgent: flag("urgent").notNull(),
    /** By when something that is still open is to be settled. */
    settleBy: dayText("settle_by"),
    visit: json("visit").$type<Visit>().notNull(),
    rulesVersion: integer("rules_version").notNull(),
  },
  (t) => [
    check("visits_state_known", isOneOf(t.state, visitStates)),
    check("visits_room_whole", sql`(${t.roomId} is null) = (${t.minutes} is null)`),
    check(
      "visits_takes_a_room",
      sql`${t.takesRoom} = 0 or (${t.roomId} is not null and ${t.fromMinute} is not null)`,
    ),
    check(
      "visits_minutes_of_a_day",
      sql`${t.fromMinute} between 0 and 1440 and ${t.minutes} between 1 and 1440`,
    ),
    ...areDays("visits", t.visitOn, t.settleBy),
    ...areFlags("visits", t.takesRoom, t.urgent),
    ...areJson("visits", t.visit),
    // query: visits of a span of days, and what takes the rooms' time
    index("visits_by_day").on(t.visitOn, t.fromMinute, t.id),
    // query: visits of one patient
    index("visits_by_patient").on(t.patientId, t.id),
    // query: visits that stand in a way: not confirmed, not attended
    index("visits_by_state").on(t.state, t.visitOn, t.id),
  ],
);

/** Projection: the next visit that is booked for a tube. Beside the tubes, whose rows are long. */
export const nextVisits = sqliteTable(
  "next_visits",
  {
    tubeId: id("tube_id").primaryKey(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    visitId: id("visit_id")
      .notNull()
      .references(() => visits.id, { onDelete: "restrict" }),
  },
  (t) => [
    // query: those of one patient, written with the patient's visits
    index("next_visits_by_patient").on(t.patientId, t.tubeId),
  ],
);

/** Projection: one row a patient who has something to be rung about, with what the call list sorts by (shared/call/call-line.ts). */
export const callLines = sqliteTable(
  "call_lines",
  {
    patientId: id("patient_id")
      .primaryKey()
      .references(() => patients.id, { onDelete: "restrict" }),
    /** From this day on somebody is rung. */
    dueOn: dayText("due_on").notNull(),
    /** A red flag is open and handed to nobody. */
    flagPending: flag("flag_pending").notNull(),
    inTrial: flag("in_trial").notNull(),
    /** The last day of a tube's first hours by the row. */
    firstHoursUntil: dayText("first_hours_until"),
    latestOn: dayText("latest_on"),
    attemptsLeft: integer("attempts_left").notNull(),
    /** `HH:MM` by the clinic's clock, where they asked to be rung then. */
    nextTime: text("next_time"),
    /** By the patient's own clock. */
    nextPart: text("next_part").$type<DayPart>(),
    /** The zone of that clock; null: the clinic's. */
    livesIn: text("lives_in").$type<Zone>(),
    /** Spans `{from, to}` in minutes of a day by that clock; none where nobody said any that can be read. */
    best: json("best").$type<readonly Span[]>().notNull().default([]),
    rulesVersion: integer("rules_version").notNull(),
    /** What was tried and what is next. */
    line: json("line").$type<CallStory>().notNull(),
  },
  (t) => [
    check("call_lines_next_time_is_time", sql`${t.nextTime} glob '[0-2][0-9]:[0-5][0-9]'`),
    check("call_lines_next_part_known", isOneOf(t.nextPart, dayParts)),
    check("call_lines_attempts_counted", sql`${t.attemptsLeft} >= 0`),
    ...areDays("call_lines", t.dueOn, t.firstHoursUntil, t.latestOn),
    ...areFlags("call_lines", t.flagPending, t.inTrial),
    ...areJson("call_lines", t.line, t.best),
    // query: in which other zones patients on the list live
    index("call_lines_elsewhere").on(t.livesIn).where(sql`"lives_in" is not null`),
    // query: the call list by its order, and how many are due on which days; rows themselves are long
    index("call_lines_due").on(
      t.dueOn,
      t.flagPending,
      t.inTrial,
      t.firstHoursUntil,
      t.latestOn,
      t.attemptsLeft,
      t.nextTime,
      t.nextPart,
      t.livesIn,
      t.best,
      t.patientId,
    ),
  ],
);

/** What a changed row or calendar would move. Nothing moves until somebody settles it by an event. */
export const proposals = sqliteTable(
  "proposals",
  {
    id: id("id").primaryKey(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    tubeId: id("tube_id").notNull(),
    stepKind: text("step_kind").notNull(),
    stood: json("stood").notNull(),
    proposed: json("proposed").notNull(),
    cause: text("cause").notNull(),
    createdAt: instant("created_at").notNull(),
    settledByEvent: id("settled_by_event").references(() => events.id, { onDelete: "restrict" }),
  },
  (t) => [
    ...areJson("proposals", t.stood, t.proposed),
    // query: proposals of one patient that nobody has settled
    index("proposals_unsettled").on(t.patientId).where(sql`${t.settledByEvent} is null`),
  ],
);
