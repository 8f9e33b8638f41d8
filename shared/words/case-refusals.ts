import type { RefusalCode } from "#shared/errors/codes.ts";
import type { RefusalArgs } from "#shared/errors/refusal.ts";

/** What is to be mended in a file of worked cases. */
export const caseRefusals = {
  "cases-unreadable": ({ file }) => `There is no file to read at ${file}. Check its name and folder.`,
  "report-unwritable": ({ file }) =>
    `The report cannot be written to ${file}. Check that its folder is there and may be written.`,
  "cases-not-json": () =>
    "The file is no JSON. Look for a missing quote, comma or bracket; no comma stands after the last of a list.",
  "cases-not-a-list": () => "The file holds no list of cases. It begins with [ and holds at least one case.",
  "case-without-name": ({ place }) => `Case ${place} of the list has no name. Give it one in "name".`,
  "case-name-taken": ({ name }) => `Two cases are called "${name}". Give each a name of its own.`,
  "case-compute-unknown": ({ name, computes }) =>
    `Case "${name}" does not say what to compute. Choose "compute" from: ${computes}.`,
  "case-field-unknown": ({ name, where, field }) =>
    `Case "${name}": there is no "${field}" in ${where || "a case"}. Check the spelling, or take it out.`,
  "case-choice-unknown": ({ name, where, choices }) =>
    `Case "${name}": ${where} is none of its choices. Choose from: ${choices}.`,
  "case-field-not-understood": ({ name, where }) =>
    `Case "${name}": ${where} is missing or is not of its kind. Compare it with docs/worked-cases.md.`,
  "case-form-lacks-field": ({ place, form, field, fields }) =>
    `${place === 0 ? "The form" : `Entry ${place}, the form`} "${form}", has no field "${field}". It has: ${fields}.`,
  "case-tube-unknown": ({ tube, tubes }) =>
    `No entry before this one opens a tube called "${tube}". There are: ${tubes}.`,
  "case-tube-unnamed": ({ tubes }) => `Say in "tube" which tube is meant. There are: ${tubes}.`,
  "case-question-unknown": ({ question, questions }) =>
    `The table has no question "${question}". It has: ${questions}.`,
} satisfies Partial<Record<RefusalCode, (args: RefusalArgs) => string>>;
