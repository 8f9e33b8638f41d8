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
import {
  areDays,
  areFilled,
  areFlags,
  areJson,
  dayText,
  flag,
  id,
  instant,
  json,
} from "#db/schema/columns.ts";

/** Who somebody is and how they are reached. Mutable, with its history in `patient_changes`; never in an event's payload. */
export const patients = sqliteTable(
  "patients",
  {
    id: id("id").primaryKey(),
    familyName: text("family_name").notNull(),
    givenName: text("given_name").notNull(),
    birthOn: dayText("birth_on"),
    language: text("language").notNull(),
    /** Null where nobody said. */
    needsInterpreter: flag("needs_interpreter"),
    /** Telephones with best times, alternate contact, home nurse, referrer, family doctor, responsible service. */
    contact: json("contact").notNull(),
    /** Words of names, numbers and telephones as the finder compares them (shared/record/patient/search-text.ts). */
    search: text("search").notNull(),
    updatedAt: instant("updated_at").notNull(),
    /** When the registration was undone: nobody is followed under this record, and its numbers are free again. */
    withdrawnAt: instant("withdrawn_at"),
    /** The record of the same person with which this one was joined, and where the tubes now stand. */
    joinedInto: id("joined_into").references((): AnySQLiteColumn => patients.id, { onDelete: "restrict" }),
  },
  (t) => [
    check("patients_joins_another", sql`${t.joinedInto} is null or ${t.joinedInto} <> ${t.id}`),
    ...areFilled("patients", t.id, t.familyName),
    ...areDays("patients", t.birthOn),
    ...areFlags("patients", t.needsInterpreter),
    ...areJson("patients", t.contact),
    // query: patients by name
    index("patients_by_name").on(t.familyName, t.givenName, t.id),
    // query: services that some patient's contact names; patients of one service
    index("patients_by_service")
      .on(sql`json_extract("contact", '$.responsibleService')`, t.id)
      .where(sql`json_extract("contact", '$.responsibleService') is not null`),
  ],
);

/** Record numbers as text: leading zeros are kept. */
export const patientIdentifiers = sqliteTable(
  "patient_identifiers",
  {
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    place: integer("place").$type<1 | 2>().notNull(),
    issuer: text("issuer").notNull(),
    value: text("value").notNull(),
  },
  (t) => [
    primaryKey({ columns: [t.patientId, t.place] }),
    unique("patient_identifiers_one_owner").on(t.issuer, t.value),
    check("patient_identifiers_place_known", sql`${t.place} in (1, 2)`),
    ...areFilled("patient_identifiers", t.issuer, t.value),
    // query: patient by record number, whoever issued it
    index("patient_identifiers_by_value").on(t.value),
  ],
);

/** Append only: what identity and contact were before and after each change. */
export const patientChanges = sqliteTable(
  "patient_changes",
  {
    id: id("id").primaryKey(),
    patientId: id("patient_id")
      .notNull()
      .references(() => patients.id, { onDelete: "restrict" }),
    actId: id("act_id")
      .notNull()
      .references(() => acts.id),
    before: json("before"),
    after: json("after").notNull(),
    at: instant("at").notNull(),
  },
  (t) => [
    ...areJson("patient_changes", t.before, t.after),
    // query: changes of one patient, oldest first
    index("patient_changes_by_patient").on(t.patientId, t.at),
    // query: records that an act opened (undo)
    index("patient_changes_by_act").on(t.actId),
  ],
);
