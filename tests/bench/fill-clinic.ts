import { addAct } from "#db/queries/acts.ts";
import { appendEvent } from "#db/queries/events.ts";
import { addIdentifier, addPatient, type PatientRow } from "#db/queries/patients.ts";
import { addStaffRow } from "#db/queries/staff.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction, type Tx } from "#db/transaction.ts";
import { type Draw, seeded } from "#seed-demo/seeded.ts";
import { openClinic } from "#server/clinic/open-clinic.ts";
import { machineNow, today } from "#server/clock.ts";
import { writeProjection } from "#server/record/append.ts";
import { booksOf } from "#server/record/books.ts";
import { toStored } from "#server/record/stored-event.ts";
import { addDays, type Day } from "#shared/day/day.ts";
import { instant, startOfDay, zone } from "#shared/day/instant.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { searchText } from "#shared/record/patient/search-text.ts";
import { abscessDrain, type Life, nephrostomy, type Tube, ureteralStent } from "#tests/bench/lives.ts";
import { people } from "#tests/support/database.ts";
import { history } from "#tests/support/told.ts";

const SEED = 20_261_125;
const NINE_HOURS = 9 * 3_600_000;
const clinicZone = zone("Europe/London");

const families = ["Brackenfold", "Thistlewick", "Marrowby", "Quenchley", "Ostervane", "Pellucid", "Windlass"];
const givens = ["Ottoline", "Barnaby", "Cressida", "Lysander", "Perpetua", "Ignatius", "Wilhelmina"];

const contactOf = (draw: Draw): Contact => ({
  telephones: [{ number: `555 01${draw.between(10, 99)}`, bestTimes: draw.from(["mornings", null]) }],
  alternate: null,
  homeNurse: null,
  referrer: null,
  familyDoctor: null,
  responsibleService: null,
});

function patientOf(draw: Draw, place: number): PatientRow & { readonly number: string } {
  const familyName = `${draw.from(families)}-${draw.from(families)}`;
  const givenName = draw.from(givens);
  const number = String(place).padStart(7, "0");
  const contact = contactOf(draw);
  return {
    id: draw.id(),
    number,
    familyName,
    givenName,
    birthOn: addDays("1930-01-01" as Day, draw.between(0, 27_000)),
    language: "English",
    needsInterpreter: draw.percent(10),
    contact,
    search: searchText({
      familyName,
      givenName,
      numbers: [number],
      telephones: contact.telephones.map((telephone) => telephone.number),
    }),
    updatedAt: machineNow(),
    withdrawnAt: null,
    joinedInto: null,
  };
}

/** One or two tubes of one kind. Four of ten patients have nephrostomies, a third a drain, the others stents. */
function livesOf(draw: Draw, day: Day, most: number): readonly Life[] {
  const tell = draw.from([
    nephrostomy,
    nephrostomy,
    nephrostomy,
    abscessDrain,
    abscessDrain,
    ureteralStent,
    ureteralStent,
  ]);
  const bothSides = tell !== abscessDrain && most > 1 && draw.percent(25);
  const tube = (number: number, side: Tube["side"]): Tube => ({
    draw,
    today: day,
    tube: draw.id(),
    number,
    side,
  });
  const first = draw.from(["left", "right"] as const);
  const second = first === "left" ? "right" : "left";
  return [tell(tube(1, first)), ...(bothSides ? [tell(tube(2, second))] : [])];
}

/** Each entry in an act of its own, recorded at nine on the day on which it was recorded. */
function record(tx: Tx, draw: Draw, patient: PatientRow, lives: readonly Life[]): number {
  const told = lives.flatMap(({ entries }) => entries);
  const inTime = told.toSorted((a, b) =>
    a.recordedOn < b.recordedOn ? -1 : a.recordedOn > b.recordedOn ? 1 : 0,
  );
  const events = history(...inTime.map((entry) => ({ ...entry, id: draw.id() })));
  const by = { patientId: patient.id, recordedBy: people.nurse.id, zone: clinicZone };
  for (const event of events) {
    const actId = draw.id();
    const recordedAt = instant(startOfDay(event.recordedOn, clinicZone) + NINE_HOURS);
    appendEvent(tx, toStored(event, { ...by, actId, recordedAt }));
    addAct(tx, {
      id: actId,
      staffId: people.nurse.id,
      command: "bench",
      inputHash: "-",
      result: "null",
      recordedAt,
    });
  }
  writeProjection(tx, { patient, events, books: booksOf(tx, patient) });
  return events.length;
}

/** An invented clinic with exactly so many tubes in place, and those that are out again. Returns how many events there are. */
export function fillClinic(db: Database, tubesInPlace: number): number {
  const draw = seeded(SEED);
  return inTransaction(db, (tx) => {
    openClinic(
      tx,
      { name: "Quillmere Tube Clinic", zone: clinicZone, phone: "", isDemo: false },
      machineNow(),
    );
    for (const person of Object.values(people)) addStaffRow(tx, person);
    const day = today(tx);
    let events = 0;
    for (let place = 1, tubes = 0; tubes < tubesInPlace; place += 1) {
      const { number, ...patient } = patientOf(draw, place);
      addPatient(tx, patient);
      addIdentifier(tx, { patientId: patient.id, place: 1, issuer: "Quillmere", value: number });
      const lives = livesOf(draw, day, tubesInPlace - tubes);
      events += record(tx, draw, patient, lives);
      tubes += lives.filter(({ staysIn }) => staysIn).length;
    }
    return events;
  });
}
