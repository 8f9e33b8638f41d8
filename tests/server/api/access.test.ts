import { describe, expect, it } from "vitest";
import { reads } from "#db/schema/reads.ts";
import { access } from "#shared/access/may.ts";
import type { Person } from "#shared/access/person.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { outcomeOf, procedures } from "#tests/support/procedures.ts";

/** Who may do what, written out: N nurse, C caller, P physician, A a physician who is an approver, L lead. Nobody else may. */
const matrix: Record<string, string> = {
  "calendar.change": "L",
  "calendar.history": "NCPAL",
  "calendar.holidays": "L",
  "calendar.preview": "L",
  "calendar.restore": "L",
  "calendar.view": "NCPAL",
  "calls.closing": "NCPAL",
  "calls.file": "NPAL",
  "calls.list": "NCPAL",
  "calls.paper": "NCPAL",
  "calls.released": "NCPAL",
  "calls.saved": "NCPAL",
  "calls.taken": "NCPAL",
  "calls.view": "NCPAL",
  "clinic.telephone": "L",
  "clinic.view": "L",
  "draft.drop": "NCPAL",
  "draft.load": "NCPAL",
  "draft.save": "NCPAL",
  "export.file": "L",
  "figure.behind": "L",
  "figure.file": "L",
  "figure.view": "L",
  "flag.done": "NCPAL",
  "flag.handed": "NCPAL",
  "flag.raised": "NCPAL",
  "flag.raising": "NCPAL",
  "flag.tubeOut": "NCPAL",
  "flag.tubeOutRecorded": "NCPAL",
  "flag.unhanded": "NCPAL",
  "flag.view": "NCPAL",
  "list.all": "NCPAL",
  "list.dayPart": "NCPAL",
  "list.exchanges": "NCPAL",
  "list.file": "NPAL",
  "list.filterDropped": "NCPAL",
  "list.filterSaved": "NCPAL",
  "list.linePut": "NCPAL",
  "list.ownOrderDropped": "NCPAL",
  "list.today": "NCPAL",
  "list.whoSawWhat": "L",
  "list.work": "NCPAL",
  "patient.correct": "NCPAL",
  "patient.find": "NCPAL",
  "patient.otherRecords": "NPAL",
  "patient.recordsMeant": "NPAL",
  "patient.register": "NPAL",
  "patient.view": "NCPAL",
  "proposal.confirm": "NPAL",
  "proposal.list": "NCPAL",
  "protocol.bringFile": "AL",
  "protocol.changeRow": "AL",
  "protocol.draft": "AL",
  "protocol.dropDraft": "AL",
  "protocol.dropRow": "AL",
  "protocol.file": "AL",
  "protocol.history": "NCPAL",
  "protocol.impact": "AL",
  "protocol.noteDraft": "AL",
  "protocol.sign": "A",
  "protocol.view": "NCPAL",
  "reading.corrected": "NCPAL",
  "reading.diary": "NCPAL",
  "reading.recorded": "NCPAL",
  "reading.voided": "NCPAL",
  "record.acceptedElsewhere": "NPAL",
  "record.alarmClosed": "NPAL",
  "record.amended": "NPAL",
  "record.amending": "NPAL",
  "record.anchorsRemoved": "NPAL",
  "record.balloonChecked": "NPAL",
  "record.beside": "NCPAL",
  "record.bled": "NCPAL",
  "record.blocked": "NCPAL",
  "record.broken": "NCPAL",
  "record.capped": "NPAL",
  "record.checked": "NPAL",
  "record.clampTrialFailed": "NPAL",
  "record.clampTrialPassed": "NPAL",
  "record.clampTrialStarted": "NPAL",
  "record.clinicalStateNoted": "NCPAL",
  "record.clockDated": "NPAL",
  "record.conditions": "NPAL",
  "record.converted": "NPAL",
  "record.datesConfirmed": "NPAL",
  "record.decisionDone": "NPAL",
  "record.died": "NCPAL",
  "record.downsized": "NPAL",
  "record.exchanged": "NPAL",
  "record.exchangePlanned": "NPAL",
  "record.factsNoted": "NCPAL",
  "record.fellOut": "NCPAL",
  "record.fluidTested": "NCPAL",
  "record.flushed": "NCPAL",
  "record.followUpEnded": "NPAL",
  "record.handedOver": "NPAL",
  "record.hospiceDecided": "NPAL",
  "record.infected": "NCPAL",
  "record.joined": "NPAL",
  "record.leaking": "NCPAL",
  "record.newPuncture": "NPAL",
  "record.notReplaced": "NPAL",
  "record.partlyDislodged": "NCPAL",
  "record.planRecorded": "NPAL",
  "record.reconcileAsked": "NCPAL",
  "record.reconciled": "NPAL",
  "record.removalDecided": "NPAL",
  "record.removed": "NPAL",
  "record.repositioned": "NPAL",
  "record.reportedOut": "NCPAL",
  "record.reviewAsked": "NCPAL",
  "record.reviewDecided": "PA",
  "record.salvaged": "NPAL",
  "record.stepAssigned": "NPAL",
  "record.suctionChanged": "NPAL",
  "record.tipPosition": "NPAL",
  "record.transferred": "NCPAL",
  "record.tube": "NPAL",
  "record.unblocked": "NPAL",
  "record.uncapped": "NPAL",
  "record.undone": "NCPAL",
  "record.upsized": "NPAL",
  "record.usualLevelAccepted": "PA",
  "record.toldOfTheTube": "NCPAL",
  "record.letterSent": "NCPAL",
  "record.notReachedDecided": "PA",
  "record.verified": "NPAL",
  "record.voided": "NPAL",
  "record.whereaboutsNoted": "NCPAL",
  "review.queue": "NCPAL",
  "review.place": "NCPAL",
  "review.view": "NCPAL",
  "rooms.change": "L",
  "rooms.history": "NCPAL",
  "rooms.restore": "L",
  "rooms.view": "NCPAL",
  "sheet.answer": "NPAL",
  "sheet.bringIn": "NPAL",
  "sheet.drop": "NPAL",
  "sheet.keep": "NPAL",
  "sheet.list": "NPAL",
  "sheet.progress": "NPAL",
  "sheet.setAside": "NPAL",
  "sheet.takingBack": "NPAL",
  "sheet.view": "NPAL",
  "shelf.added": "NL",
  "shelf.broughtIn": "NL",
  "shelf.changed": "NL",
  "shelf.previewed": "NL",
  "shelf.putBack": "NL",
  "shelf.takenOff": "NL",
  "shelf.view": "NCPAL",
  "staff.close": "L",
  "staff.list": "NCPAL",
  "tube.ifUnchanged": "PA",
  "tube.output": "NCPAL",
  "tube.urine": "NCPAL",
  "tube.view": "NCPAL",
  "visit.booked": "NCPAL",
  "visit.calendarFile": "NCPAL",
  "visit.days": "NCPAL",
  "visit.hospitalBrought": "NPAL",
  "visit.hospitalPreviewed": "NPAL",
  "visit.letter": "NCPAL",
  "visit.moved": "NCPAL",
  "visit.noted": "NCPAL",
  "visit.offers": "NCPAL",
  "visit.prepared": "NCPAL",
  "visit.sheet": "NCPAL",
  "visit.view": "NCPAL",
};

const who: Record<string, Person> = {
  N: people.nurse,
  C: people.caller,
  P: { ...people.physician, isApprover: false },
  A: people.physician,
  L: people.lead,
};

const cells = procedures.flatMap((walked) =>
  Object.keys(who).map((letter) => ({ walked, path: walked.path, letter })),
);

describe("every procedure", () => {
  it("stands in the matrix and in the access table, and nothing else does", () => {
    const paths = procedures.map(({ path }) => path).toSorted();
    expect(Object.keys(matrix).toSorted()).toEqual(paths);
    expect(Object.keys(access).toSorted()).toEqual(paths);
  });

  it.each(cells)("$path is open or shut to $letter as the matrix says", async ({ walked, letter }) => {
    using db = testDatabase();
    const outcome = await outcomeOf(db, who[letter] ?? null, walked);
    if (matrix[walked.path]?.includes(letter)) {
      expect(outcome).not.toBe("FORBIDDEN");
      expect(outcome).not.toBe("UNAUTHORIZED");
    } else {
      expect(outcome).toBe("FORBIDDEN");
    }
  });

  it.each(procedures)(
    "$path answers nobody who is not signed in, and writes nothing down",
    async (walked) => {
      using db = testDatabase();
      expect(await outcomeOf(db, null, walked)).toBe("UNAUTHORIZED");
      expect(db.orm.select().from(reads).all()).toEqual([]);
    },
  );

  it.each(procedures)("$path declares what it shows", ({ meta }) => {
    expect(meta?.subject.kind).toBeTypeOf("string");
  });
});
