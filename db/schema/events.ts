import { sql } from "drizzle-orm";
import {
  type AnySQLiteColumn,
  check,
  index,
  integer,
  primaryKey,
  sqliteTable,
  text,
  unique,
} from "drizzle-orm/sqlite-core";
import { acts } from "#db/schema/acts.ts";
import { areDays, areFilled, areJson, dayText, id, instant, isOneOf, json } from "#db/schema/columns.ts";
import { patients } from "#db/schema/patients.ts";
import { staff } from "#db/schema/staff.ts";
import { calendarVersions, protocolVersions } from "#db/schema/versions.ts";
import type { Zone } from "#shared/day/instant.ts";
import { type Precision, precisions } from "#shared/day/when.ts";

/** Rows, not a CHECK list: SQLite cannot alter a CHECK, and each release brings kinds. */
export const eventKinds = sqliteTable("event_kinds", { kind: text("kind").primaryKey() }, (t) => [
  ...areFilled("event_kinds", t.kind),
]);

/** The record. Append only: one stream a patient, everything else is computed from it. */
export const events = sqliteTable(
  "events",
  {
    id: id("id").primaryKey(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    /** 1, 2, 3 ... in the order of recording, per patient. */
    seq: integer("seq").notNull(),
    actId: id("act_id")
      .notNull()
      .references(() => acts.id),
    kind: text("kind")
      .notNull()
      .references(() => eventKinds.kind, { onDelete: "restrict" }),
    payloadVersion: integer("payload_version").notNull(),
    payload: json("payload").notNull(),
    precision: text("precision").$type<Precision>().notNull(),
    occurredEarliest: dayText("occurred_earliest"),
    occurredLatest: dayText("occurred_latest"),
    occurredAt: instant("occurred_at"),
    /** The zone in which the moment was entered. */
    zone: text("zone").$type<Zone>().notNull(),
    /** Order within one day, as entered. */
    daySequence: integer("day_sequence").notNull().default(0),
    recordedAt: instant("recorded_at").notNull(),
    recordedBy: id("recorded_by")
      .notNull()
      .references(() => staff.id, { onDelete: "restrict" }),
    amends: id("amends").references((): AnySQLiteColumn => events.id, { onDelete: "restrict" }),
    pinsProtocol: integer("pins_protocol").references(() => protocolVersions.version, {
      onDelete: "restrict",
    }),
    pinsCalendar: integer("pins_calendar").references(() => calendarVersions.version, {
      onDelete: "restrict",
    }),
  },
  (t) => [
    unique("events_one_place_in_stream").on(t.patientId, t.seq),
    check("events_seq_starts_at_1", sql`${t.seq} >= 1`),
    check("events_payload_version_starts_at_1", sql`${t.payloadVersion} >= 1`),
    check("events_precision_known", isOneOf(t.precision, precisions)),
    check(
      "events_span_whole",
      sql`(${t.precision} = 'unknown') = (${t.occurredEarliest} is null) and (${t.occurredEarliest} is null) = (${t.occurredLatest} is null)`,
    ),
    check(
      "events_span_in_order",
      sql`${t.occurredEarliest} is null or ${t.occurredEarliest} <= ${t.occurredLatest}`,
    ),
    check(
      "events_day_is_one_day",
      sql`${t.precision} <> 'day' or ${t.occurredEarliest} = ${t.occurredLatest}`,
    ),
    check("events_amends_another", sql`${t.amends} is null or ${t.amends} <> ${t.id}`),
    ...areDays("events", t.occurredEarliest, t.occurredLatest),
    ...areJson("events", t.payload),
    ...areFilled("events", t.id, t.zone),
    // query: events of one act (undo)
    index("events_by_act").on(t.actId),
    // query: what amends this event
    index("events_by_amended").on(t.amends),
  ],
);

/** Which tubes an event names. Append only. The tube is known by its events, so no foreign key to the projection. */
export const eventTubes = sqliteTable(
  "event_tubes",
  {
    eventId: id("event_id")
      .notNull()
      .references(() => events.id, { onDelete: "restrict" }),
    tubeId: id("tube_id").notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.eventId, t.tubeId] }),
    // query: story of one tube
    index("event_tubes_by_tube").on(t.tubeId, t.eventId),
  ],
);
