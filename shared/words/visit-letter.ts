import type { Day } from "#shared/day/day.ts";
import { printDay, printWholeDay } from "#shared/day/print-day.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { PrerequisiteThing } from "#shared/visit/prerequisite-things.ts";
import type { Minute } from "#shared/visit/room.ts";
import type { Visit, VisitPlace } from "#shared/visit/visit.ts";
import type { VisitAct } from "#shared/visit/visit-acts.ts";
import { capital } from "#shared/words/capital.ts";
import { calledAtHome } from "#shared/words/diary-sheet.ts";
import { printMinute } from "#shared/words/offers.ts";

/** Why no letter is printed for a visit; null while the patient is expected. */
export function noLetterWords(
  { state, on, by }: Pick<Visit, "state" | "on" | "by">,
  today: Day,
): string | null {
  switch (state) {
    case "cancelled":
      return `This visit is cancelled${by === null ? "" : ` by ${by}`}: there is no letter for it.`;
    case "did not attend":
      return "Nobody came to this visit: book another one and print its letter.";
    case "arrived":
      return "The patient is here for this visit already: there is no letter for it.";
    case "done":
      return "This visit is done: there is no letter for it.";
    case "proposed":
    case "booked":
    case "confirmed":
      return on < today
        ? `The day of this visit, ${printDay(on)}, has passed: move it, or book another one, and print its letter.`
        : null;
  }
}

const HOUR = 60;
const NOON_HOUR = 12;
const EVENING_HOUR = 18;

/** 570 is "9:30 in the morning (09:30)": nobody has to count beyond twelve. */
export function clockAtHome(at: Minute): string {
  const hour = Math.floor(at / HOUR);
  const minutes = String(at % HOUR).padStart(2, "0");
  const part = hour < NOON_HOUR ? "morning" : hour < EVENING_HOUR ? "afternoon" : "evening";
  const words =
    at === NOON_HOUR * HOUR ? "noon" : `${hour % NOON_HOUR || NOON_HOUR}:${minutes} in the ${part}`;
  return `${words} (${printMinute(at)})`;
}

/** "Wednesday 11 November 2026, at 9:30 in the morning (09:30)". */
export const whenAtHome = (on: Day, place: VisitPlace): string =>
  place.from === null
    ? `${printWholeDay(on)}. The time is not in our record: ask there`
    : `${printWholeDay(on)}, at ${clockAtHome(place.from)}`;

const doneWith = {
  exchange: "is changed for a new one, over a thin wire",
  check: "is checked",
  removal: "is taken out",
} as const satisfies Record<VisitAct, string>;

/** "The tube in your left kidney (Left nephrostomy) is changed for a new one, over a thin wire." */
export const doneAtVisit = (tube: TubeState, title: string | undefined, act: VisitAct): string =>
  `${capital(calledAtHome(tube))}${title === undefined ? "" : ` (${title})`} ${doneWith[act]}.`;

/** Said of every visit: whatever was planned, somebody looks first. */
export const MAY_BE_OTHERWISE =
  "What is done is settled with you on the day. It can be something else than was planned.";

const always = [
  "This letter, and your tube card if you have one.",
  "A list of all your medicines, with any blood thinners on it. Do not stop any medicine unless we tell you.",
  "Your output diary, if you keep one.",
] as const;

/** What a thing that the clinic's rows ask for before a visit means to somebody who comes to it. */
const atHome = {
  "signed order": null,
  "blood thinners": null,
  labs: { bring: "The results of blood tests that were done elsewhere, each with its day." },
  allergies: {
    tell: "every allergy that you know of: contrast, antibiotics, latex, what cleans the skin. If you were given a medicine against a reaction, take it at the hours that you were told",
  },
  "antibiotic cover": { tell: "antibiotics that you take now, and a fever or chills in the last days" },
  fasting: {
    tell: "whether you have been told when to stop eating and drinking, feeds through a tube included",
  },
  "pregnancy test": { tell: "if you are pregnant or may be" },
  escort: {
    bring:
      "Somebody who takes you home, if you are to be given a medicine that makes you sleepy: ask us whether you are.",
  },
  interpreter: { tell: "if you want an interpreter, and for which language" },
  transport: { tell: "if you cannot come or go home by yourself" },
  "lies prone": { tell: "if you cannot lie on your front for as long as the visit takes" },
  "dialysis or chemotherapy": { tell: "your days of dialysis or chemotherapy" },
  isolation: { tell: "if a hospital has kept you apart from others because of a germ" },
} as const satisfies Record<PrerequisiteThing, { bring: string } | { tell: string } | null>;

export type ToBring = { readonly bring: readonly string[]; readonly tell: readonly string[] };

/** What to bring and what to tell before, by what the clinic's rows ask for; what does not apply to this patient is left out. */
export function toBring(things: readonly PrerequisiteThing[]): ToBring {
  const plain = things.flatMap((thing) => atHome[thing] ?? []);
  return {
    bring: [...always, ...plain.flatMap((one) => ("bring" in one ? one.bring : []))],
    tell: plain.flatMap((one) => ("tell" in one ? one.tell : [])),
  };
}

export const letterCautions = [
  "This letter is not for emergencies: nobody sees an answer to it at once.",
  "Until the visit, the tube is cared for as before: what was told to you about it stands.",
] as const;
