import { unknownFact } from "#shared/tube/certainty.ts";
import {
  flagDone,
  flagHanded,
  flagRaised,
  letterSent,
  notReachedDecided,
  rang,
  toldOfTube,
} from "#tests/support/call-factories.ts";
import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";
import { visitBooked, visitNoted } from "#tests/support/visit-factories.ts";

/** Calls: the whole ladder to a physician and on; two tubes in one call; red flags; a stent told of; after a removal; on a trial. */

const ladder = patient(
  "three attempts, the alternate contact, a letter, the doctors, a physician, then reached",
  "1950-02-03",
  make.placed({ on: "2026-08-14" }),
  rang({ on: "2026-08-17", at: "10:00", outcome: "voicemail" }),
  rang({ on: "2026-08-18", at: "18:10", number: "555 0117" }),
  rang({ on: "2026-08-19", at: "09:30", outcome: "wrong number", number: "555 0117" }),
  rang({ on: "2026-08-20", at: "11:00", to: "the alternate contact" }),
  letterSent({ on: "2026-08-21", at: undefined }),
  letterSent({ on: "2026-08-28", at: undefined, to: "the referrer and the family doctor", note: "both" }),
  notReachedDecided({ on: "2026-09-04", at: "15:00" }),
  rang({ on: "2026-09-14", at: "17:30", outcome: "call back", back: "2026-09-15", backAt: "18:00" }),
  rang({
    on: "2026-09-15",
    at: "18:00",
    outcome: "reached the patient",
    interpreter: "Farsi, the hospital's service",
    answers: [
      { question: "fever", asks: "A temperature of 38.0 C or more?", of: null, says: "no" },
      {
        question: "draining",
        asks: "Is anything draining?",
        of: { tube: "tube-1", number: 1 },
        says: "does not know",
      },
    ],
  }),
);

const twoTubes = patient(
  "two tubes in one call, one called about alone before, a red flag handed and done",
  "1961-11-30",
  make.placed({ kind: "abscess drain", side: "not sided", on: "2026-08-14" }),
  make.placed({ tube: "tube-2", number: 2, side: "right", on: "2026-08-14" }),
  make.called({ on: "2026-08-15" }),
  rang({ on: "2026-08-24", at: "10:00", outcome: "reached a carer" }),
  flagRaised({ on: "2026-08-24", at: "10:04", of: { tube: "tube-2", number: 2 }, toldBy: "the daughter" }),
  flagHanded({ on: "2026-08-24", at: "10:20", note: "by telephone" }),
  flagDone({ on: "2026-08-25", at: "08:30" }),
  flagRaised({ id: "flag-2", on: "2026-08-26", row: null, untilReached: "keep the tube" }),
);

const stent = patient(
  "a stent told of, missed once, home from a hospital",
  "1939-05-05",
  make.placed({
    kind: "ureteral stent",
    on: "2026-08-14",
    plan: { act: "remove", by: "2026-10-12" },
  }),
  toldOfTube({ on: "2026-08-20", at: undefined, whom: "a carer", language: "Polish" }),
  visitBooked({ tubes: [{ tubeId: "tube-1", act: "removal" }], visitOn: "2026-09-08" }),
  visitNoted({ on: "2026-09-08", at: "12:00", state: "did not attend" }),
  make.whereaboutsNoted({ on: "2026-09-10" }),
  make.whereaboutsNoted({ on: "2026-09-14", place: "at home" }),
);

const removed = patient(
  "removed here, and never reached since",
  "1944-07-07",
  make.placed({ kind: "abscess drain", side: "not sided", on: "2026-08-14" }),
  make.removed({ on: "2026-09-01" }),
  rang({ on: "2026-09-02" }),
  rang({ on: "2026-09-03" }),
  notReachedDecided({ on: "2026-09-04", again: null, reason: "seen on the ward" }),
);

const onTrial = patient(
  "a trial whose call reached nobody",
  "1955-12-01",
  make.placed({ on: "2026-08-14" }),
  make.called({ on: "2026-08-17" }),
  make.trialStarted({ on: "2026-09-04", at: "11:00", bagAtHome: unknownFact }),
  rang({ on: "2026-09-05", at: "09:40" }),
);

export const callPatients = [ladder, twoTubes, stent, removed, onTrial];
