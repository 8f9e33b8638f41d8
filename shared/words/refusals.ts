import type { RefusalCode } from "#shared/errors/codes.ts";
import type { Refusal, RefusalArgs } from "#shared/errors/refusal.ts";
import { bookingRefusals } from "#shared/words/booking-refusals.ts";
import { calendarRefusals } from "#shared/words/calendar-refusals.ts";
import { callRefusals } from "#shared/words/call-refusals.ts";
import { caseRefusals } from "#shared/words/case-refusals.ts";
import { listRefusals } from "#shared/words/list-refusals.ts";
import { protocolRefusals } from "#shared/words/protocol-refusals.ts";
import { roomsRefusals } from "#shared/words/rooms-refusals.ts";
import { sheetRefusals } from "#shared/words/sheet-refusals.ts";
import { shelfRefusals } from "#shared/words/shelf-refusals.ts";
import { visitRefusals } from "#shared/words/visit-refusals.ts";

type Sentence = (args: RefusalArgs) => string;

/** Each sentence says what to mend. Nothing here blames the person who typed. */
const sentences = {
  "day-not-understood": ({ text }) =>
    `"${text}" is not understood as a date. Type it like 14 nov 2026, today, -3, march 2026, or ? for unknown.`,
  "day-order-unclear": ({ text }) =>
    `"${text}" can be read two ways. Type the month in letters, like 3 apr 2026.`,
  "day-in-future": ({ day }) => `${day} is in the future. Type the day on which it happened.`,
  "day-does-not-exist": ({ text }) => `There is no day "${text}". Check day, month and year.`,
  "day-missing": () => "Type a date, or ? if it is unknown.",
  "day-not-exact": ({ text }) => `"${text}" is not one exact day. Type it like 14 nov 2026.`,
  "days-reversed": ({ text }) => `In "${text}" the second day lies before the first. Turn them round.`,
  "weekday-differs": ({ day, weekday }) => `${day} is not a ${weekday}. Check the date.`,
  "time-not-understood": ({ text }) => `"${text}" is not understood as a time. Type it like 14:05.`,
  "time-does-not-exist": ({ text, day }) =>
    `There is no ${text} on ${day}: the clocks go forward over it. Type a time before or after the change.`,
  "choice-repeated": () => "The same choice stands here twice. Remove one.",
  "database-missing": ({ file }) =>
    `There is no database at ${file}. Check DATABASE_FILE, or make one with: npm run staff -- add`,
  "database-not-one": ({ file }) => `${file} is not a database of Dwellbook. Check DATABASE_FILE.`,
  "database-damaged": ({ file }) => `${file} is damaged. Put the last backup in its place.`,
  "database-read-only": ({ file }) =>
    `${file} cannot be written. Give this account the right to write the file and its folder.`,
  "database-busy": ({ file }) => `${file} is in use by another program. Close it and try again.`,
  "database-older": ({ file }) =>
    `${file} was made by an earlier version. Bring it up to date by starting with: npm start`,
  "database-newer": ({ file }) =>
    `${file} was made by a later version than this one. Start that version, or put a backup of this version in its place.`,
  "backup-exists": ({ file }) => `There is already a file at ${file}. Choose another name.`,
  "file-missing": ({ file }) => `There is no file at ${file}. Check its name.`,
  "record-not-one": ({ file }) =>
    `${file} is no record that Dwellbook wrote. Bring the JSON file as it was exported, not formatted anew.`,
  "record-newer": ({ version, newest, release }) =>
    `This record was written in form ${version} by Dwellbook ${release}; this one reads up to form ${newest}. Bring it in with that version or a later one.`,
  "record-cut": ({ table }) =>
    `The file is not whole: ${table} has not as many rows as its first line says. Export again, or copy the file again.`,
  "record-row-damaged": ({ table, row, at }) =>
    `Row ${row} of ${table} is damaged${at === undefined ? "" : ` at "${at}"`}. Nothing was brought in: export again, or copy the file again.`,
  "record-row-points-nowhere": ({ table, row, to }) =>
    `Row ${row} of ${table} points to a row of ${to} that is not in the file. Nothing was brought in: export again, or copy the file again.`,
  "clinic-already-there": ({ file }) =>
    `${file} holds a clinic already. Name a new file in DATABASE_FILE: a record is brought into an empty database only.`,
  "clinic-missing": ({ file }) =>
    `${file} holds no clinic yet. Make one with npm run staff -- add, or bring one in with npm run import.`,
  "password-wrong": () => "This is not the password of your account. Type it again.",
  "sign-in-wrong": () => "User name and password do not fit together. Check both and type them again.",
  "sign-in-refused": ({ until }) => `Too many wrong sign-ins. Try again after ${until}.`,
  "request-from-elsewhere": () =>
    "This came from another address than Dwellbook's own and was not carried out. Open Dwellbook itself and try again.",
  "body-too-long": ({ limit }) => `This is more than ${limit} at once. Shorten the longest text.`,
  "not-signed-in": () => "Sign in first.",
  "session-ended": () =>
    "You were signed out because the time ran out. Sign in again; what you typed is kept.",
  "not-allowed": () => "Your role may not do this. Ask the lead of the clinic who does.",
  "act-already-used": () => "This form was saved before with other content. Open it again to change it.",
  "draft-too-long": ({ limit }) =>
    `This is too long to keep unsaved (over ${limit} characters). Save or shorten it.`,
  "user-name-not-understood": () =>
    "Type a user name of 2 to 40 small letters, digits, dots or hyphens, beginning with a letter.",
  "user-name-taken": ({ text }) => `There is an account "${text}" already. Choose another user name.`,
  "user-name-unknown": ({ text }) =>
    `There is no open account "${text}". See the accounts with: npm run staff -- list`,
  "password-too-short": ({ limit }) => `The password needs at least ${limit} characters.`,
  "password-too-long": ({ limit }) => `The password may have at most ${limit} characters.`,
  "passwords-differ": () => "The two passwords are not the same. Type both again.",
  "approver-not-physician": () =>
    "Only a physician can be an approver. Change the role, or leave approver out.",
  "zone-unknown": ({ text }) => `"${text}" is not a time zone. Type one like Europe/London.`,
  "command-not-understood": ({ usage }) => `This is not understood. Use it like:\n${usage}`,
  "clock-not-demo": () => "Only a demo's clock can be moved, and this database is no demo.",
  "setting-missing": ({ name }) =>
    `The setting ${name} is missing. Give it before the command, like ${name}=...`,
  "setting-not-understood": ({ name, text }) => `The setting ${name} is not understood: "${text}".`,
  "length-not-understood": ({ text }) =>
    `"${text}" is not understood as a size. Type it with its unit, like 8 F, .035 in or 2.7 mm; ~ before it for about, ? alone for unknown.`,
  "length-needs-unit": ({ text }) => `"${text}" needs a unit: F, in, mm, cm or G.`,
  "length-absurd": ({ text, limit }) =>
    `${text} is outside what is made (${limit}). Check the number and the unit.`,
  "length-not-positive": ({ text }) => `"${text}" must be more than zero.`,
  "length-comma-unclear": ({ text }) =>
    `"${text}" can be read two ways. Type a point for decimals and no comma for thousands.`,
  "length-unit-unfit": ({ text, what, like }) => `"${text}" does not tell ${what}. Type it like ${like}.`,
  "length-too-fine": ({ text, decimals }) => `"${text}" has more than ${decimals} decimals. Round it.`,
  "gauge-not-listed": ({ text, gauges }) =>
    `No outside is kept for ${text}, only for ${gauges} G. Type the outside in mm or in.`,
  "wire-not-innermost": () => "A wire has no inside: move it innermost, or choose another sort.",
  "volume-missing": () => "Type how much, 0 for nothing, or ? if it is unknown.",
  "volume-not-understood": ({ text }) =>
    `"${text}" is not understood as a volume. Type a number with mL, L or oz, ~ before an estimate, or ? for unknown.`,
  "volume-comma-unclear": ({ text }) =>
    `"${text}" can be read two ways. Type it without the comma, like 1500 or 1.5 mL.`,
  "volume-needs-unit": ({ text }) => `"${text}" needs a unit or a point: 8,5 mL or 8.5.`,
  "volume-negative": ({ text }) =>
    text === undefined
      ? "A volume that was measured or put in is not less than zero."
      : `"${text}" is less than zero. Type what was measured or put in.`,
  "volume-absurd": ({ text, limit }) => `"${text}" is over ${limit}. Check the number and the unit.`,
  "measure-not-understood": ({ text, unit }) =>
    `"${text}" is not understood here. Type a number in ${unit}, another with its unit, ~ before an estimate, or ? for unknown.`,
  "measure-comma-unclear": ({ text }) => `"${text}" can be read two ways. Type a point, or no sign at all.`,
  "measure-outside": ({ text, least, most, unit }) =>
    `"${text}" is not between ${least} and ${most} ${unit}. Check the number, and type its unit if it is another.`,
  "volume-by-vessel": ({ text }) =>
    `How much is "${text}"? Ask what it holds and type about how many mL, like ~300, or ? if nobody can say.`,
  "pasted-not-in-rows": () =>
    "What is pasted here is not in the rows yet. Put it into the rows, or clear it.",
  "reading-ends-before-start": () => "This reading ends before it starts. Check both times.",
  "text-missing": ({ what }) => `Type ${what ?? "something here"}.`,
  "text-too-long": ({ limit }) => `This is longer than ${limit} characters. Shorten it.`,
  "choice-unknown": ({ text }) => `"${text}" is not one of the choices here.`,
  "word-unknown": ({ text, choices }) => `"${text}" is not one of: ${choices}.`,
  "word-unclear": ({ text, choices }) => `"${text}" can mean ${choices}. Type more of it.`,
  "side-differs": ({ kind, side }) =>
    `The kind says ${kind} and the side says ${side}. Type the side in one place.`,
  "plan-not-understood": ({ text }) =>
    `"${text}" is not understood as a plan. Type it like exchange by 30 oct, remove by +90, review 14 nov because ..., or leave it blank for the protocol's row.`,
  "bores-not-understood": ({ text }) =>
    `"${text}" is not understood as an inside. Type each place with its size, like hub 2.0 mm, shaft 1.9 mm, end hole .038 in.`,
  "fluids-not-understood": ({ text }) =>
    `"${text}" is not understood. Type each fluid with its volume, like contrast 20, irrigation 500.`,
  "clinic-telephone-not-understood": ({ text }) =>
    `"${text}" is not one telephone number. Type it as it is dialed, with nothing after it, or leave it blank.`,
  "telephone-not-understood": ({ line }) =>
    `Line ${line} does not begin with a telephone number. Type the number first, then the best times.`,
  "time-missing": () => "Type the time too, like 14:05 or yesterday 23:50.",
  "tract-after-tube": () => "The puncture cannot be later than the tube in it. Check both dates.",
  "too-many": ({ limit }) => `At most ${limit} fit here. Leave the others out.`,
  "amendment-changes-kind": ({ from, to }) =>
    `This was entered as "${from}" and would become "${to}". Void the entry and record it anew.`,
  "nothing-said": () => "Nothing is typed here yet. Type at least one entry, or leave the form.",
  "tube-unknown": () =>
    "This tube is not in this patient's record. Go back to the patient and choose the tube.",
  "entry-unknown": () =>
    "This entry is not in this patient's record. Open the story again and choose the entry.",
  "proposals-changed": ({ count }) =>
    `${count} of these dates ${count === 1 ? "is" : "are"} no longer proposed as you saw ${count === 1 ? "it" : "them"}: confirmed meanwhile, or other entries came in. Open the list again.`,
  "draft-changed": () =>
    "The draft was changed since you opened it. Open it again, and look at what changed.",
  "draft-missing": () => "There is no draft any more: it was signed or dropped. Begin a new one.",
  "draft-without-change": () =>
    "The draft changes no row of a table that is approved already. Change a row first.",
  "signed-by-author": ({ others }) =>
    `Who changed the draft does not sign it. It can be signed by: ${others}.`,
  "nothing-proposed": () => "No change of dates is proposed for this tube any more. Open it again.",
  "nothing-to-undo": () => "There is nothing here to undo. Open the story to see what stands.",
  "entry-not-understood": ({ field }) =>
    `The entry is incomplete${field ? ` at "${field}"` : ""}. Check it and save again.`,
  "entry-newer": ({ version, newest }) =>
    `This entry was written by a later version of Dwellbook (${version}, this one reads up to ${newest}). Start that version.`,
  "time-in-future": ({ time }) => `${time} is still to come. Type the time at which it happened.`,
  "upsize-not-larger": ({ old, size }) =>
    `${size} is not larger than the ${old} in place. Check the size, or record it as an exchange.`,
  "downsize-not-smaller": ({ old, size }) =>
    `${size} is not smaller than the ${old} in place. Check the size, or record it as an exchange.`,
  "reason-missing": () => "Say in a few words why the entry is changed.",
  "changed-meanwhile": ({ entries }) =>
    `Somebody recorded this since you opened the form: ${entries}. Look at it, then save again; what you typed is kept.`,
  "event-before-opening": () =>
    "This is before the tube was placed or taken over. Check the date, or correct the placement first.",
  "event-after-end": () =>
    "The record of this tube has ended before that day. Check the date, or undo the end first.",
  "tube-opened-twice": () => "This tube is already in the record.",
  "tube-not-opened": () => "There is no tube here to convert. Record the tube first.",
  "already-capped": () => "The tube is already capped. Record it as uncapped first, or check the date.",
  "not-capped": () => "The tube is not capped at that time. Check the date.",
  "already-out": () =>
    "The tube is out. Record it as salvaged through the old tract or as a new puncture: the tract's age depends on which.",
  "not-out": () => "The tube is still in by this record. Record that it fell out, or record its removal.",
  "fragment-inside": () =>
    "A part of this tube is still inside. Record the removal of that part; the next tube is a new record.",
  "no-pins": () =>
    "The clinic has no protocol or calendar yet, so no date can be computed. Ask the lead to set them up.",
  "already-on-trial": () =>
    "A clamp trial is running already. Record how it came out first, or check the date.",
  "not-on-trial": () => "No clamp trial is running at that time. Record its start first, or check the date.",
  "no-balloon": () =>
    "By this record no balloon holds the tube. Note what holds it first, or choose the right tube.",
  "role-missing": () => "This kind has no usual role: choose the role.",
  "mode-missing": () => "This kind has no usual mode: choose the mode.",
  "patient-unknown": () => "There is no such patient. Search by name, number, birth date or telephone.",
  "number-taken": ({ issuer }) =>
    `Another patient has this number (${issuer}). Check the number; if it is the same person, open that record.`,
  "no-output": () => "This tube lies wholly inside and has no output. Record what was told as a check.",
  "plan-reason-missing": ({ doubts, offered }) =>
    `The clinic's row asks why this goes on, since ${doubts}. Type a reason, or one key: ${offered}.`,
  "side-stands": ({ side }) =>
    `The record says ${side}, and that was seen. If a report says otherwise, leave the side blank here and ask for it to be reconciled.`,
  "side-missing": () => "Type the side: left, right, midline or transplant; ? if it is unknown.",
  "decided-twice": () => "This is decided above already: leave it out here.",
  "day-before-decision": () => "This day lies before the day of the decision. Check both dates.",
  "plan-before-tube": ({ day, since }) =>
    `${day} lies before the tube was placed (${since}), so nothing can be planned for it. Type the day that is meant, with its year.`,
  "candidates-too-few": () =>
    'Say "yes" at two tubes or more. If only one can be meant, record its removal on its own page.',
  "candidate-not-in": () =>
    'A tube that is recorded as out already stands among them. Say "no" there; its own page says what is open of it.',
  "record-withdrawn": () =>
    "The registration of this patient was undone, and nothing is recorded under it. Find the patient, or register anew.",
  "record-joined": ({ number }) =>
    `This record was joined with another of the same person and takes no more entries. Record it there: ${number}.`,
  "joins-itself": () => "This is the same record. Find the other record of this person.",
  "joined-already": () =>
    "One of the two is joined with a record already. Open that one, or undo the joining first.",
  "others-joined": () =>
    "Another record was joined into that one. Join this one into it instead, from its own page.",
  "rests-on-entry": ({ entries }) =>
    `What was recorded later rests on this entry: ${entries}. Undo that first, the newest first.`,
  "rests-on-readings": ({ count }) =>
    `${count === 1 ? "1 emptying is" : `${count} emptyings are`} logged of the tube. Void ${count === 1 ? "it" : "them"} first, so that nothing that was measured drops out of sight.`,
  "rests-on-join": ({ entries }) =>
    `Recorded since the two were joined, of the other's tubes or of the whole patient: ${entries}. Undo that first, then the joining.`,
  "join-anew": () => "The two records are apart. Look at both again and join them anew.",
  "steps-still-owned": ({ count }) =>
    `${count} open steps are still this person's. Choose who takes them, a role or a person, then close the account.`,
  "person-unknown": () => "This person has no open account here. Choose somebody from the list.",
  "last-lead": () => "This is the last account of a lead. Make another lead first.",
  "alarm-none": () => "No alarm stands for this tube: there is nothing to close.",
  "usual-level-zero": () =>
    "Nothing at all is never usual: a tube that is dry stays an alarm. Type the level that it makes.",
  ...calendarRefusals,
  ...roomsRefusals,
  ...protocolRefusals,
  ...sheetRefusals,
  ...shelfRefusals,
  ...listRefusals,
  ...bookingRefusals,
  ...callRefusals,
  ...visitRefusals,
  ...caseRefusals,
} satisfies Record<RefusalCode, Sentence>;

/** The sentence shown for a refusal. */
export function refusalSentence(refusal: Refusal): string {
  const sentence: Sentence = sentences[refusal.code];
  return sentence(refusal.args ?? {});
}
