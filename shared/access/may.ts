import type { Person } from "#shared/access/person.ts";
import { type StaffRole, staffRoles } from "#shared/access/roles.ts";

/** Whom a line of the table may name: a role, or the physicians who are approvers. */
export type Actor = StaffRole | "approver";

const everyone = staffRoles;
/** Who plans, changes or ends what a tube is; a caller records what a call tells. */
const clinical = ["nurse", "physician", "lead"] as const;
/** A decision in review is a physician's. */
const deciding = ["physician"] as const;
/** Who changes the draft of the clinic's table; whoever did does not sign it, unless nobody else can. */
const drafting = ["lead", "approver"] as const;
/** Who keeps the clinic's shelf; a physician reads it. */
const stocking = ["nurse", "lead"] as const;

/** What each may do: one line a procedure of the API. What stands in no line is refused. */
export const access = {
  "calendar.change": ["lead"],
  "calendar.history": everyone,
  "calendar.holidays": ["lead"],
  "calendar.preview": ["lead"],
  "calendar.restore": ["lead"],
  "calendar.view": everyone,
  "clinic.telephone": ["lead"],
  "clinic.view": ["lead"],
  "draft.drop": everyone,
  "draft.load": everyone,
  "draft.save": everyone,
  "export.file": ["lead"],
  "list.all": everyone,
  "list.dayPart": everyone,
  "list.exchanges": everyone,
  "list.file": clinical,
  "list.filterDropped": everyone,
  "list.filterSaved": everyone,
  "list.linePut": everyone,
  "list.ownOrderDropped": everyone,
  "list.today": everyone,
  "list.whoSawWhat": ["lead"],
  "list.work": everyone,
  "patient.correct": everyone,
  "patient.find": everyone,
  "patient.otherRecords": clinical,
  "patient.recordsMeant": clinical,
  "patient.register": clinical,
  "patient.view": everyone,
  "proposal.confirm": clinical,
  "proposal.list": everyone,
  "protocol.bringFile": drafting,
  "protocol.changeRow": drafting,
  "protocol.draft": drafting,
  "protocol.dropDraft": drafting,
  "protocol.dropRow": drafting,
  "protocol.file": drafting,
  "protocol.history": everyone,
  "protocol.impact": drafting,
  "protocol.noteDraft": drafting,
  "protocol.sign": ["approver"],
  "protocol.view": everyone,
  "reading.corrected": everyone,
  "reading.diary": everyone,
  "reading.recorded": everyone,
  "reading.voided": everyone,
  "record.acceptedElsewhere": clinical,
  "record.alarmClosed": clinical,
  "record.amended": clinical,
  "record.amending": clinical,
  "record.anchorsRemoved": clinical,
  "record.balloonChecked": clinical,
  "record.beside": everyone,
  "record.bled": everyone,
  "record.blocked": everyone,
  "record.broken": everyone,
  "record.called": everyone,
  "record.capped": clinical,
  "record.checked": clinical,
  "record.clampTrialFailed": clinical,
  "record.clampTrialPassed": clinical,
  "record.clampTrialStarted": clinical,
  "record.clinicalStateNoted": everyone,
  "record.clockDated": clinical,
  "record.conditions": clinical,
  "record.converted": clinical,
  "record.datesConfirmed": clinical,
  "record.decisionDone": clinical,
  "record.died": everyone,
  "record.downsized": clinical,
  "record.exchanged": clinical,
  "record.exchangePlanned": clinical,
  "record.factsNoted": everyone,
  "record.fellOut": everyone,
  "record.fluidTested": everyone,
  "record.flushed": everyone,
  "record.followUpEnded": clinical,
  "record.handedOver": clinical,
  "record.hospiceDecided": clinical,
  "record.infected": everyone,
  "record.joined": clinical,
  "record.leaking": everyone,
  "record.newPuncture": clinical,
  "record.notReplaced": clinical,
  "record.partlyDislodged": everyone,
  "record.planRecorded": clinical,
  "record.reconcileAsked": everyone,
  "record.reconciled": clinical,
  "record.removalDecided": clinical,
  "record.removed": clinical,
  "record.repositioned": clinical,
  "record.reportedOut": everyone,
  "record.reviewAsked": everyone,
  "record.reviewDecided": deciding,
  "record.salvaged": clinical,
  "record.stepAssigned": clinical,
  "record.suctionChanged": clinical,
  "record.tipPosition": clinical,
  "record.transferred": everyone,
  "record.tube": clinical,
  "record.unblocked": clinical,
  "record.uncapped": clinical,
  "record.undone": everyone,
  "record.upsized": clinical,
  "record.usualLevelAccepted": ["physician"],
  "record.verified": clinical,
  "record.voided": clinical,
  "record.whereaboutsNoted": everyone,
  "review.place": everyone,
  "review.queue": everyone,
  "review.view": everyone,
  "rooms.change": ["lead"],
  "rooms.history": everyone,
  "rooms.restore": ["lead"],
  "rooms.view": everyone,
  "sheet.answer": clinical,
  "sheet.bringIn": clinical,
  "sheet.drop": clinical,
  "sheet.keep": clinical,
  "sheet.list": clinical,
  "sheet.progress": clinical,
  "sheet.setAside": clinical,
  "sheet.takingBack": clinical,
  "sheet.view": clinical,
  "shelf.added": stocking,
  "shelf.broughtIn": stocking,
  "shelf.changed": stocking,
  "shelf.previewed": stocking,
  "shelf.putBack": stocking,
  "shelf.takenOff": stocking,
  "shelf.view": everyone,
  "staff.close": ["lead"],
  "staff.list": everyone,
  "tube.ifUnchanged": ["physician"],
  "tube.output": everyone,
  "tube.urine": everyone,
  "tube.view": everyone,
  "visit.booked": everyone,
  "visit.calendarFile": everyone,
  "visit.days": everyone,
  "visit.hospitalBrought": clinical,
  "visit.hospitalPreviewed": clinical,
  "visit.letter": everyone,
  "visit.moved": everyone,
  "visit.noted": everyone,
  "visit.offers": everyone,
  "visit.prepared": everyone,
  "visit.sheet": everyone,
  "visit.view": everyone,
} as const satisfies Record<string, readonly Actor[]>;

export type Procedure = keyof typeof access;

export const isProcedure = (path: string): path is Procedure => Object.hasOwn(access, path);

/** Whether this person may call that procedure. Screens ask, to offer only what may be done; the API asks again, always. */
export function may(
  { role, isApprover }: Pick<Person, "role" | "isApprover">,
  procedure: Procedure,
): boolean {
  const actors: readonly Actor[] = access[procedure];
  return actors.includes(role) || (isApprover && actors.includes("approver"));
}

/** A caller takes back what that caller recorded; whoever may change a tube takes back anybody's. */
export const mayUndo = ({ id, role }: Pick<Person, "id" | "role">, recordedBy: string): boolean =>
  id === recordedBy || clinical.some((actor) => actor === role);

/** What was done to the shelf is taken back by whoever keeps it. */
export const mayStock = ({ role }: Pick<Person, "role">): boolean => stocking.some((actor) => actor === role);
