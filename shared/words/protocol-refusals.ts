import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in a draft of the clinic's table, typed or brought in as a file. */
export const protocolRefusals = {
  "figure-not-understood": ({ text }) => `"${text}" is not a number. Type it in digits, like 14 or 0.5.`,
  "figure-not-whole": ({ text }) => `"${text}" is not a whole number. Type one without decimals, like 14.`,
  "figure-too-low": ({ text, least }) => `"${text}" is less than ${least}. Type ${least} or more.`,
  "figure-too-high": ({ text, most }) => `"${text}" is more than ${most}. Type ${most} or less.`,
  "figure-outside": ({ text, least, most }) =>
    `"${text}" is not between ${least} and ${most}. Check the number.`,
  "figures-reversed": ({ from, to }) => `This goes from ${from} to ${to}. Turn the two round.`,
  "window-out-of-order": ({ one, days, other, limit }) =>
    `The ${one}, ${days} days, lies after the ${other}, ${limit}. Make the ${one} ${limit} or less, or the ${other} ${days} or more.`,
  "mature-before-immature": ({ days, limit }) =>
    `A tract that is immature under ${limit} days is not mature from ${days}. Make this ${limit} or more, or leave it blank.`,
  "slow-before-usual": ({ days, limit }) =>
    `Of somebody slow to heal the tract is immature longer than the usual ${limit} days, not under ${days}. Make this ${limit} or more, or leave it blank.`,
  "interval-row-twice": ({ row }) =>
    `The row "${row}" is for this kind, this factor and this catheter already. Change that one, or choose another kind, factor or catheter here.`,
  "plain-row-missing": ({ row, kind, factor }) =>
    `The row "${row}" is for a ${kind} with ${factor}, and no row is for one without. Keep or add the ${kind}'s own row, or choose no factor here.`,
  "plateau-over-its-days": ({ days, limit }) =>
    `${days} of the last ${limit} days cannot be. Make this ${limit} or less, or the days behind it more.`,
  "further-over-first": ({ further, minutes }) =>
    `A further tube of the visit would take ${further} minutes, longer than one alone, ${minutes}. Make this ${minutes} or less, or leave it blank.`,
  "red-flag-not-in-table": ({ row, text }) =>
    `The question "${row}" opens the red flag "${text}", and the table would have no row of that name. Let the question name one that there is, or keep or add that row.`,
  "question-without-answer": ({ text }) =>
    `No answer is named that opens "${text}". Type yes or no, or leave blank what is opened.`,
  "answer-opens-nothing": ({ text }) =>
    `The answer ${text} would open nothing. Leave this blank, or name a red flag or what is recorded then.`,
  "attempts-too-many": ({ attempts, limit }) =>
    `${attempts} attempts alike are too many: after ${limit} another way is tried. Make this ${limit} or less, and add a row of what follows.`,
  "physician-not-last": ({ rung }) =>
    `A physician decides last, and "${rung}" would come after. Drop the physician's row, and add it again behind the others.`,
  "call-hours-without-length": ({ from }) =>
    `From ${from} to ${from} is no time at all. Type an end that comes later.`,
  "call-hours-overlap": ({ part, from, before, to }) =>
    `The ${part} begins at ${from}, before the end of the ${before}, ${to}. Let the ${part} begin at ${to} or later, or the ${before} end by ${from}.`,
  "row-says-twice": ({ text }) => `"${text}" stands twice in this row. Leave one of them blank.`,
  "row-twice": ({ text, row }) =>
    `"${text}" has a row already, "${row}", and only one of the two would be found. Take it out of one of them.`,
  "row-unknown": ({ text }) =>
    `The table has no row "${text}". Check how it is written, or open the draft again.`,
  "protocol-column-missing": ({ label }) =>
    `No column of this file is called "${label}". It needs the columns row, figure and value, as an export has them.`,
  "protocol-column-twice": ({ label }) =>
    `Two columns of this file are called "${label}". Give one of them another heading.`,
  "protocol-file-empty": () =>
    "This file has no lines of the table. Export the table, mend it, and bring that file.",
  "row-not-in-file": ({ row }) =>
    `The file has no line of "${row}", which the table always has. Bring its lines, with blank values for "no row".`,
  "figure-unknown": ({ text, row }) =>
    `The row "${row}" has no figure "${text}". Check how it is written, or take the line out.`,
  "figure-missing": ({ text, row }) =>
    `The row "${row}" has no line for its figure "${text}". Add one, with a blank value for "no row".`,
  "figure-twice": ({ text, row, line }) =>
    `The figure "${text}" of "${row}" stands in line ${line} already. Keep one of the two lines.`,
  "row-says-otherwise": ({ text, row }) =>
    `The lines of "${row}" name the row "${text}". Write the same in the column row and here.`,
  "row-cannot-be-none": ({ row }) => `The table cannot do without "${row}". Give its figures.`,
  "protocol-approved-already": ({ version, by, day }) =>
    `Version ${version} of the protocol was approved by ${by} on ${day}. There is nothing to approve.`,
  "not-an-approver": ({ name }) =>
    `${name} is no approver. Name a physician whose account says so: npm run staff -- list shows who does.`,
  "name-differs": ({ text }) =>
    `"${text}" is not the name of this account. Type it in full, as npm run staff -- list shows it.`,
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
