import { type ColumnNames, calledFields } from "#shared/sheet/called-fields.ts";

/**
 * What a column of a clinic's list can say, in the order in which an export writes them: the field's own name, the heading that it is
 * shown and exported by, and other headings that clinics give it (practice, no source).
 */
const fields = {
  familyName: { label: "Family name", also: ["surname", "last name", "family"] },
  givenName: { label: "Given name", also: ["first name", "forename", "given names"] },
  wholeName: { label: "Whole name", also: ["name", "patient", "patient name", "full name", "pt", "pt name"] },
  birthOn: { label: "Born on", also: ["born", "birth date", "date of birth", "dob", "d.o.b.", "birthdate"] },
  number: {
    label: "Record number",
    also: [
      "mrn",
      "number",
      "hospital number",
      "hospital no",
      "hosp no",
      "patient id",
      "patient no",
      "unit number",
    ],
  },
  issuer: { label: "Issued by", also: ["issuer", "number issued by"] },
  secondNumber: { label: "Second number", also: ["other number", "2nd number"] },
  secondIssuer: { label: "Second number issued by", also: [] },
  telephones: {
    label: "Telephones",
    also: ["telephone", "phone", "phone number", "tel", "mobile", "contact number"],
  },
  language: { label: "Language", also: ["speaks"] },
  needsInterpreter: { label: "Needs an interpreter", also: ["interpreter"] },
  alternateName: { label: "Alternate contact", also: ["next of kin", "carer", "nok"] },
  alternateTelephone: {
    label: "Telephone of the alternate contact",
    also: ["carer phone", "next of kin phone", "nok phone"],
  },
  homeNurse: { label: "Home nurse", also: ["district nurse", "community nurse"] },
  referrer: { label: "Referrer", also: ["referred by", "referring doctor"] },
  familyDoctor: { label: "Family doctor", also: ["gp", "primary care", "primary care doctor"] },
  responsibleService: { label: "Responsible service", also: ["service", "team", "specialty", "under"] },
  kind: {
    label: "Kind",
    also: ["tube", "drain", "catheter", "tube type", "type of tube", "drain type", "type", "device"],
  },
  side: { label: "Side", also: ["laterality", "l r"] },
  size: { label: "Size", also: ["french", "fr", "size fr", "size f", "size french", "tube size"] },
  exchangedOn: {
    label: "Last exchanged on",
    also: [
      "last exchange",
      "last exchanged",
      "exchanged",
      "last change",
      "last changed",
      "date changed",
      "changed",
    ],
  },
  placedOn: {
    label: "Placed on",
    also: [
      "placed",
      "date placed",
      "placement",
      "placement date",
      "inserted",
      "insertion date",
      "date inserted",
      "in",
    ],
  },
  exchangeBy: {
    label: "Exchange by",
    also: ["next exchange", "exchange due", "next change", "change due", "due", "due date", "next due"],
  },
  removeBy: { label: "Remove by", also: ["removal due", "to be removed"] },
  reviewBy: { label: "Review on", also: ["review", "next review", "review date"] },
  plan: { label: "Plan", also: ["operator plan", "plan for tube"] },
  from: { label: "Taken over from", also: ["from", "placed at", "where placed", "transferred from"] },
  takes: { label: "Takes a wire of", also: ["takes", "wire", "takes wire"] },
  retention: { label: "Held by", also: ["retention", "lock", "held"] },
  fullLength: { label: "Full length, cm", also: ["length", "full length", "length cm"] },
  externalLength: { label: "External length, cm", also: ["external length", "external", "length outside"] },
  flushOrder: { label: "Flush ordered", also: ["flush", "flush order", "flushes"] },
  balloon: { label: "Water in the balloon, mL", also: ["balloon", "balloon water", "balloon ml"] },
  cavity: { label: "Cavity", also: ["site", "location", "collection"] },
  organ: { label: "Organ", also: [] },
  route: { label: "Route", also: ["access"] },
  indication: { label: "Indication", also: ["diagnosis", "reason", "reason for tube"] },
  role: { label: "Role", also: [] },
  mode: { label: "Mode", also: ["drains to"] },
  removedOn: { label: "Removed on", also: ["removed", "date removed", "out", "date out", "removal date"] },
  note: { label: "Note", also: ["notes", "comment", "comments", "remarks"] },
} as const satisfies Record<string, ColumnNames>;

export type SheetField = keyof typeof fields;

export const sheetFields = Object.keys(fields) as SheetField[];

export const labelOf = (field: SheetField): string => fields[field].label;

/** Several columns may be kept as notes; every other field stands in one column. */
export const isRepeatable = (field: SheetField): boolean => field === "note";

export const dateFields = [
  "birthOn",
  "placedOn",
  "exchangedOn",
  "exchangeBy",
  "removeBy",
  "reviewBy",
  "removedOn",
] as const satisfies readonly SheetField[];
export type DateField = (typeof dateFields)[number];

export const { fieldCalled, isHeading } = calledFields<SheetField>(fields);
