import type { Day } from "#shared/day/day.ts";
import { printBirth, printDay } from "#shared/day/print-day.ts";
import { type Parsed, parsed, unread } from "#shared/errors/refusal.ts";
import { searchWord } from "#shared/record/patient/search-text.ts";
import type { Side } from "#shared/tube/vocabulary.ts";
import type { ReadBooking } from "#shared/visit/hospital-list/read-booking.ts";
import type { Visit } from "#shared/visit/visit.ts";

/** A tube that has not ended. */
export type HereTube = {
  readonly id: string;
  readonly number: number;
  /** As lists show it: "Left nephrostomy, 8 F, locking loop". */
  readonly name: string;
  /** The kind by its name. */
  readonly kind: string;
  /** Null: nobody knows. */
  readonly side: Side | null;
};

/** A patient whose record stands here. */
export type HerePatient = {
  readonly id: string;
  readonly familyName: string;
  readonly givenName: string;
  readonly birthOn: Day | null;
  readonly number: string | null;
  readonly tubes: readonly HereTube[];
  readonly visits: readonly Visit[];
};

/** What stands here, as far as a list of bookings has to know. */
export type HereBooked = {
  readonly byNumber: (number: string) => readonly HerePatient[];
  readonly bornOn: (on: Day) => readonly HerePatient[];
};

type Said = Pick<ReadBooking, "number" | "name" | "birthOn">;

const wordsOf = (name: string): readonly string[] => name.split(/[\s,]+/).map(searchWord);

/** Whether a name begins or ends with the family's: which part stands first, a whole name does not say. */
function isNamed({ familyName }: HerePatient, { name }: Said): boolean {
  if (name === null) return true;
  const [before, after] = name.text.split(",");
  const alone = after === undefined ? name.text : (before ?? "");
  if (searchWord(alone) === searchWord(familyName)) return true;
  if (!name.whole || after !== undefined) return false;
  const [words, own] = [wordsOf(name.text), wordsOf(familyName)];
  const joined = (part: readonly string[]): string => part.join(" ");
  return [words.slice(0, own.length), words.slice(-own.length)].some((part) => joined(part) === joined(own));
}

const isBorn = ({ birthOn }: HerePatient, said: Said): boolean =>
  said.birthOn === null || birthOn === null || birthOn === said.birthOn;

const identity = ({ familyName, givenName, birthOn }: HerePatient): string =>
  `${familyName}, ${givenName}, ${birthOn === null ? "birth date unknown" : `born ${printBirth(birthOn)}`}`;

function byNameAndBirth(said: Said, here: HereBooked): readonly HerePatient[] {
  if (said.name === null || said.birthOn === null) return [];
  return here.bornOn(said.birthOn).filter((patient) => isNamed(patient, said));
}

function nobody({ number, name, birthOn }: Said): Parsed<never> {
  if (number !== null) return unread("booking-number-unknown", { number });
  if (name === null || birthOn === null) return unread("booking-of-nobody");
  return unread("booking-person-unknown", { name: name.text, born: printDay(birthOn) });
}

/**
 * The patient whom a row means: by the record number, whatever else it says agreeing with it; else by family name and birth date. Refusals:
 * `booking-number-unknown`, `booking-person-unknown`, `booking-of-nobody`, `booking-number-of-another`, `booking-several-patients`.
 */
export function whomMeant(said: Said, here: HereBooked): Parsed<HerePatient> {
  const numbered = said.number === null ? [] : here.byNumber(said.number);
  const agreeing = numbered.filter((patient) => isNamed(patient, said) && isBorn(patient, said));
  const [first] = numbered;
  if (first !== undefined && agreeing.length === 0)
    return unread("booking-number-of-another", { number: said.number ?? "", here: identity(first) });
  const found = agreeing.length > 0 ? agreeing : byNameAndBirth(said, here);
  const [only, another] = found;
  if (only === undefined) return nobody(said);
  return another === undefined
    ? parsed(only)
    : unread("booking-several-patients", { first: identity(only), second: identity(another) });
}
