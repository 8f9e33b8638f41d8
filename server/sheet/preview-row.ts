import { clinicOf } from "#db/queries/clinic.ts";
import { newestVersions } from "#db/queries/versions.ts";
import type { Database } from "#db/sqlite.ts";
import { now } from "#server/clock.ts";
import { booksOf } from "#server/record/books.ts";
import { clockText, dayAt } from "#shared/day/instant.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import type { Standing } from "#shared/sheet/stand.ts";
import { openSteps } from "#shared/step/open-steps.ts";
import { decide } from "#shared/tube/decide.ts";
import { fold } from "#shared/tube/fold.ts";
import { tubeName } from "#shared/tube/name.ts";

type Coming = Extract<Standing, { stands: "comes in" }>;

/** A row as it will stand: everything of its patient and its tube, and the first of its open steps. Nothing is written. */
export function previewRow(db: Database, { row, read, here, besideRows, alikeRows, alikeHere }: Coming) {
  const { details, tube } = read;
  const at = now(db);
  const { zone } = clinicOf(db);
  const moment = { today: dayAt(at, zone), time: clockText(at, zone), pins: newestVersions(db) };
  const { kind, when, time, payload } = tube;
  const ids = { eventId: `row ${row}`, tubes: [`row ${row}`], daySequence: 0, amends: null, lastSeen: 0 };
  const decision = decide([], { kind, when, time, payload, ...ids }, moment);
  if (!decision.ok) throw new DomainError(decision.refusals);
  const state = fold(decision.events);
  const [opened] = state.tubes;
  if (opened === undefined) throw new Error("an opening opened nothing");
  const [step] = openSteps(state, booksOf(db, details));
  return {
    row,
    patient: { ...details, isHere: here !== null },
    tube: {
      name: tubeName(opened),
      since: opened.catheter.since,
      time,
      tractSince: opened.tract.since,
      opening: payload,
    },
    step: step ?? null,
    beside: { besideRows, alikeRows, alikeHere },
  };
}
