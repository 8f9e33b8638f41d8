import { describe, expect, it } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import { openAmendment } from "#server/record/open-amendment.ts";
import { recordAmendment } from "#server/record/record-amendment.ts";
import { recordEvent } from "#server/record/record-event.ts";
import { addToShelf } from "#server/shelf/add-to-shelf.ts";
import { changeOnShelf } from "#server/shelf/change-on-shelf.ts";
import { takeOffShelf } from "#server/shelf/shelve.ts";
import { viewShelf } from "#server/shelf/view-shelf.ts";
import { viewTube } from "#server/tubes/view-tube.ts";
import { lengthOf } from "#shared/size/exact-length.ts";
import { people } from "#tests/support/database.ts";
import { clinicWithPatient } from "#tests/support/patient.ts";

const lastSeen = Number.MAX_SAFE_INTEGER;
const patientId = "patient-1";
const drain = { sort: "tube", name: "Drain 10", outside: "10 f", takes: ".038 in", endHole: "open" };

const doing = (db: Database) => ({ db, staff: people.nurse });

/** A nephrostomy that was recorded as "Drain 10" of the shelf. */
function recorded(db: Database) {
  const { typeId } = addToShelf(doing(db), { actId: newId(), texts: drain });
  const texts = { kind: "pcn l", when: "1 jun 2026", shelf: "drain 10" };
  const placed = recordEvent(doing(db), "placed", { actId: newId(), lastSeen, patientId, texts });
  const [type] = viewShelf(db).types;
  const seen = { typeId, lastUpdatedAt: type?.updatedAt ?? 0 };
  return { seen, eventId: placed.eventIds[0] ?? "", tubeId: placed.tubeId ?? "" };
}

/** Corrects the note alone; what the tube then is. */
function correctNote(db: Database, { eventId, tubeId }: { eventId: string; tubeId: string }) {
  const { texts } = openAmendment(db, { patientId, eventId });
  const amended = { ...texts, amendedBecause: "The note was missing.", note: "under X-ray" };
  recordAmendment(doing(db), { actId: newId(), lastSeen, patientId, eventId, texts: amended });
  const { tube } = viewTube(db, tubeId);
  return { texts, size: tube.size, takes: tube.inside.takes, endHole: tube.inside.endHole };
}

const asRecorded = {
  size: { certainty: "confirmed", value: lengthOf(10, "F") },
  takes: { certainty: "confirmed", value: lengthOf(0.038, "in") },
  endHole: { certainty: "confirmed", value: "open" },
};

describe("correcting an entry that named a type of the shelf keeps what it said then", () => {
  it("with the type as it was", () => {
    using db = clinicWithPatient();
    const { seen: _same, ...entry } = recorded(db);
    const { texts, ...tube } = correctNote(db, entry);
    expect(texts).toMatchObject({ shelf: "drain 10", size: "" });
    expect(tube).toEqual(asRecorded);
  });

  it("with the type changed since", () => {
    using db = clinicWithPatient();
    const { seen, ...entry } = recorded(db);
    const texts = { ...drain, outside: "12 f", takes: ".035 in", endHole: "closed" };
    changeOnShelf(doing(db), { actId: newId(), ...seen, texts });
    const { texts: opened, ...tube } = correctNote(db, entry);
    expect(opened).toMatchObject({ shelf: "", size: "10 F" });
    expect(tube).toEqual(asRecorded);
  });

  it("with the type off the shelf since", () => {
    using db = clinicWithPatient();
    const { seen, ...entry } = recorded(db);
    takeOffShelf(doing(db), { actId: newId(), ...seen });
    const { texts: _opened, ...tube } = correctNote(db, entry);
    expect(tube).toEqual(asRecorded);
  });
});
