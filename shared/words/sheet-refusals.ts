import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to mend in a list that is brought in, and what of it cannot be. */
export const sheetRefusals = {
  "sheet-not-text": ({ what }) =>
    `This is ${what}, not a list as text. Open it in the spreadsheet, save the sheet as CSV, and bring that.`,
  "file-too-large": ({ limit }) =>
    `This file is larger than ${limit}. A list of tubes is far smaller: check that it is the right file, or save only the sheet with the tubes.`,
  "sheet-empty": () => "There are no rows here. Bring a list with a line of headings and the tubes below it.",
  "sheet-too-wide": ({ columns, limit }) =>
    `This has ${columns} columns; a list of tubes has at most ${limit}. Check that the right sheet was saved.`,
  "sheet-too-long": ({ rows, limit }) =>
    `This has ${rows} rows; at most ${limit} are brought in at once. Split the list.`,
  "cell-too-long": ({ row, limit }) =>
    `A cell of row ${row} holds more than ${limit} characters. A quotation mark may be missing there; shorten or mend it.`,
  "headings-missing": () =>
    "No line of headings is found. Put a first line above the list that names its columns, like: name, record number, tube, size, placed.",
  "quote-not-closed": ({ row }) =>
    `A quotation mark opens in row ${row} and is never closed. Close it or take it out, and bring the list again.`,
  "column-unknown": ({ heading, headings }) =>
    `No column of this list is called "${heading}". Its columns are: ${headings}.`,
  "column-missing": ({ what }) => `No column says ${what}. Choose the column that does.`,
  "column-twice": ({ field }) =>
    `Two columns are matched to "${field}". Leave one of them out, or keep it as a note.`,
  "columns-changed": () => "The columns do not fit this list. Open it again.",
  "date-order-asked": ({ row, text }) =>
    `Row ${row} says "${text}", which can be read two ways. Say which stands first in this list, the day or the month.`,
  "name-order-asked": ({ row }) =>
    `The name in row ${row} has no comma. Say which part of a name stands first in this list.`,
  "cell-formula": ({ text }) => `"${text}" is a formula. Save the list with values in place of formulas.`,
  "cell-broken": ({ text }) => `The spreadsheet itself shows "${text}" here. Type what should stand there.`,
  "date-other-order": ({ text, order }) =>
    `"${text}" cannot be read with the ${order === "day first" ? "day" : "month"} first, as the rest of the list is. Type the month in letters.`,
  "birth-century-unclear": ({ text }) => `"${text}" may be of either century. Type the year in four digits.`,
  "month-or-day-unclear": ({ text }) =>
    `"${text}" may be a month with its year or a day of that month. Type it like apr 2026 or 26 apr 2026.`,
  "day-number": ({ text }) =>
    `"${text}" is a spreadsheet's own count of days. Show the column as dates and save the list again.`,
  "name-one-word": () => "There is only one word here. Type family name, comma, given name.",
  "name-order-unclear": () =>
    "The name has no comma, and nobody has said which part stands first. Answer above, or type a comma.",
  "number-cut-short": ({ text }) =>
    `The spreadsheet shows "${text}" and has lost digits of the number. Show the column as text and type it again.`,
  "two-sizes": ({ text }) => `"${text}" names two sizes. Type the size of the tube that is in.`,
  "two-tubes": ({ text }) => `"${text}" is more than one tube. Give each tube a row of its own.`,
  "two-plans": ({ columns }) =>
    `${columns} plan two things for one tube. Keep the next one, and the other as a note.`,
  "cells-differ": ({ one, other }) =>
    `One column says "${one}", another "${other}". Find out which is right.`,
  "kind-not-said": ({ text }) =>
    text === ""
      ? "The kind of tube is missing. Type it like nephrostomy, abscess drain or jj."
      : `"${text}" does not say what kind of tube it is. Type it like nephrostomy, abscess drain or jj.`,
  "tube-is-out": ({ text }) =>
    `The list says that this tube is out (${text}). Only tubes that are in are brought in; clear the cell if it is in.`,
  "number-shared": ({ rows }) =>
    `Rows ${rows} have one record number and different names or birth dates. Find out whose number it is.`,
  "number-of-another": () =>
    "Somebody with another name or birth date has this record number here. Find out whose number it is.",
  "tube-here-already": ({ tube }) =>
    `This patient has a ${tube} here already, and the row does not say the same of it. Record what changed on the tube's own page, or a second tube there.`,
  "sheet-gone": () => "This list is no longer kept. Bring it again.",
  "nothing-to-bring-in": () =>
    "No row of this list can be brought in: what could be is here already, and any other row is set aside until it is mended.",
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
