import { flushIsOrdered } from "#shared/output/output-of-tube.ts";
import { UL_PER_FLUID_OUNCE } from "#shared/output/read-volume.ts";
import { known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import type { Character, Role } from "#shared/tube/vocabulary.ts";
import { toldFact } from "#shared/words/facts.ts";
import { noPaperWords } from "#shared/words/home-paper.ts";

/** What amounts are written in: millilitres, or US fluid ounces. */
export type DiaryUnit = "mL" | "fl oz";

/** Empty lines of one sheet. */
export const SHEET_ROWS = 14;

export type Diary =
  | { readonly kind: "nothing to write down"; readonly because: string }
  | {
      readonly kind: "sheet";
      /** What the patient may call the tube. */
      readonly called: string;
      readonly columns: readonly string[];
      readonly howTo: readonly string[];
    };

type Measuring = { readonly measured: boolean; readonly says: string };

const measured = (says: string): Measuring => ({ measured: true, says });
const notMeasured = (says: string): Measuring => ({ measured: false, says });

const emptied = (vessel: string): Measuring =>
  measured(`Empty the ${vessel} at about the same time every day. Write each emptying on a line of its own.`);

const whollyInside = notMeasured("This tube lies wholly inside the body: there is no output to write down.");
const drainsInside = notMeasured("This tube drains inside the body: there is no output to write down.");
const feeds = notMeasured("This tube is for feeding: there is no output to write down.");
const irrigates = notMeasured("What goes into this tube is treatment: there is no output to write down.");

/** Roles whose output is no measure, however the tube is set. */
const withoutOutput: Partial<Record<Role, Measuring>> = {
  internal: drainsInside,
  feeding: feeds,
  "irrigation access": irrigates,
};

/** How the output of a tube with a part outside is measured at home, by role and mode, or why there is none. */
function measuring({ role, mode }: TubeState): Measuring {
  const none = withoutOutput[role];
  if (none !== undefined) return none;
  switch (mode) {
    case "to bag":
    case "one-way valve":
      return role === "intermittent"
        ? measured("Each time you drain, write on a line of its own how much came out.")
        : emptied("bag");
    case "to bulb":
      return emptied("bulb");
    case "stoma pouch":
      return emptied("pouch");
    case "to suction":
    case "underwater seal":
      return measured(
        "Read the container at about the same time every day, and write how much has come since the line before.",
      );
    case "capped":
    case "clamped":
    case "on a clamp trial":
      return measured(
        `The tube is ${mode} now, and nothing is meant to come out. Write a line only for a time in which it was open.`,
      );
    case "internal":
      return drainsInside;
    case "to feed":
      return feeds;
    case "to irrigate":
      return irrigates;
  }
}

const plainCharacters = {
  serous: "pale yellow and thin",
  serosanguineous: "pink",
  bloody: "like blood",
  purulent: "thick, like pus",
  bilious: "green or golden",
  feculent: "like stool",
  chylous: "milky",
  clear: "like water",
  "urine-like": "like urine",
  food: "like food",
  debris: "with bits in it",
  clots: "with clots in it",
} as const satisfies Record<Character, string>;

function looksLike({ expectedFluid }: TubeState): string {
  const examples = expectedFluid.map((of) => `${plainCharacters[of]} (${of})`);
  return `Looks like: in your own words${examples.length === 0 ? "" : `, for example ${examples.join("; ")}`}.`;
}

const putIn = "Write how many mL were put in since the line before, and 0 if none was.";

/** The order as it is recorded. An example is no order: where none is recorded, that is said. */
function flushing(tube: TubeState): readonly string[] {
  if (!flushIsOrdered(tube)) return [];
  const order = { what: "order", print: (words: string) => words, telling: "marked" } as const;
  const ordered =
    tube.flushOrder.certainty === "unknown"
      ? "Flush: no order is recorded here, so ask the clinic."
      : `Flush, as ordered: ${toldFact(tube.flushOrder, order)}.`;
  return [`${ordered} ${putIn}`];
}

const zeroIsWritten =
  "If nothing came out, write 0. Never leave it blank: a blank says that nobody measured. A guess: put ~ before the number. Not known: write ?.";

/** The column says mL; which ounces are meant, it does not. */
const unitLine = {
  mL: [],
  "fl oz": ["Write what came out in US fluid ounces (fl oz)."],
} as const satisfies Record<DiaryUnit, readonly string[]>;

/** "the tube in your left kidney": what a patient may call a tube. */
export function calledAtHome(tube: TubeState): string {
  const { ifOut, output } = kindOf(tube.kind);
  const side = known(tube.side);
  const hand = side === "left" || side === "right" ? side : null;
  const onSide = hand === null ? "" : ` on the ${hand}`;
  const place = ifOut ?? output;
  switch (place) {
    case "kidney":
      return `the tube in your ${side === "transplant" ? "transplanted " : hand === null ? "" : `${hand} `}kidney`;
    case "bile":
    case "gallbladder":
      return "the tube that drains your bile";
    case "stomach or bowel":
      return "the tube in your stomach or bowel";
    case "bladder":
      return "the tube in your bladder";
    case "chest":
    case "pleural":
      return `the tube in your chest${onSide}`;
    case "peritoneal":
      return "the tube in your belly";
    case "collection":
    case "lymphocele":
      return `the drain${onSide}`;
    case "urine":
      return "the tube that drains your urine";
    case null:
      return "the tube";
  }
}

/** A sheet of one tube for the patient to fill in by hand, in the words that the log of output is read in. */
export function diarySheet(tube: TubeState, unit: DiaryUnit): Diary {
  const gone = noPaperWords(tube.status);
  if (gone !== null) return { kind: "nothing to write down", because: gone };
  const how = kindOf(tube.kind).outside ? measuring(tube) : whollyInside;
  if (!how.measured) return { kind: "nothing to write down", because: how.says };
  const flush = flushing(tube);
  return {
    kind: "sheet",
    called: calledAtHome(tube),
    columns: [
      "Date",
      "Time",
      `Came out, ${unit}`,
      ...(flush.length === 0 ? [] : ["Flush put in, mL"]),
      "Looks like",
      "Leak",
    ],
    howTo: [
      how.says,
      ...unitLine[unit],
      zeroIsWritten,
      ...flush,
      looksLike(tube),
      "Leak round the tube at the skin: write none, damp or soaking.",
    ],
  };
}

/** An amount of the clinic's rows: "1500 mL", or "about 51 fl oz (1500 mL)" for somebody who measures in ounces. */
export const rowAmount = (ml: number, unit: DiaryUnit): string =>
  unit === "mL" ? `${ml} mL` : `about ${Math.round((ml * 1000) / UL_PER_FLUID_OUNCE)} fl oz (${ml} mL)`;

/** What the sheet is not. */
export const diaryCautions = [
  "This sheet is not for emergencies: nobody sees it until you show it or read it out.",
  "What is missing is not counted as 0. An amount alone decides nothing: the clinic also looks at the tube, at you and at pictures.",
] as const;
