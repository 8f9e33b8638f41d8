import { instant } from "#shared/day/instant.ts";
import { ran } from "#tests/factories/alarm-input.ts";
import * as make from "#tests/support/factories.ts";
import { patient } from "#tests/support/freeze-patient.ts";

/** Alarms from readings: what was answered and what came after, and a level that was accepted as usual. */

const until = instant(Date.parse("2026-11-02T15:00Z"));

const answered = {
  ...patient(
    "dry for seven hours and answered, then bloody; a low day that stays",
    "1950-02-03",
    make.placed({ on: "2026-10-01" }),
    make.alarmClosed({ on: "2026-11-02", answers: [{ key: "dry:r2026-11-02T08:00", until }] }),
  ),
  readings: [
    ran("2026-10-30T00:00", "2026-10-31T00:00", 80),
    ran("2026-11-02T08:00", "2026-11-02T15:00", 0),
    ran("2026-11-02T15:00", "2026-11-02T18:00", 400, { characters: ["bloody"] }),
  ],
};

const usual = {
  ...patient(
    "a segment that makes 60 mL: usual until a day, low after it",
    "1961-11-30",
    make.placed({ kind: "external biliary drain", on: "2026-10-01" }),
    make.usualAccepted({ on: "2026-10-20", until: "2026-10-31" }),
  ),
  readings: [
    ran("2026-10-31T00:00", "2026-11-01T00:00", 60),
    ran("2026-11-01T00:00", "2026-11-02T00:00", 60),
  ],
};

const pinkUrine = {
  ...patient(
    "pink urine soon after a placement",
    "1950-02-03",
    make.placed({ on: "2026-11-02", at: "10:00" }),
  ),
  readings: [ran("2026-11-03T08:00", "2026-11-03T20:00", 300, { characters: ["serosanguineous"] })],
};

const bothDry = {
  ...patient(
    "two nephrostomies dry together, what is voided unknown",
    "1950-02-03",
    make.placed({ on: "2026-10-01" }),
    make.placed({ on: "2026-10-01", tube: "tube-2", number: 2, side: "right" }),
  ),
  readings: ["tube-1", "tube-2"].map((tubeId) =>
    ran("2026-11-02T08:00", "2026-11-02T15:00", 0, { id: `dry-${tubeId}`, tubeId }),
  ),
};

export const alarmPatients = [answered, usual, pinkUrine, bothDry];
