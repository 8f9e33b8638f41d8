import { keyOf } from "#shared/protocol/rows/address.ts";
import { andList } from "#shared/words/and-list.ts";

/** What each sort of row is called, by its path in the table. */
export const rowNames = {
  intervals: "Interval",
  firstCall: "First call",
  escalation: "A physician is asked",
  passage: "What passes through what",
  output: "Low output",
  flush: "Flush as ordered",
  balloon: "Balloon water",
  tips: "Tip",
  anchors: "Anchors or sutures out",
  "outputRows.lowNetInstead": "Low output instead",
  "outputRows.lastCompleteDayHours": "The last complete day ends within",
  "outputRows.clinicalStateHours": "The clinical state is no older than",
  "outputRows.fever": "Fever",
  "outputRows.plateau": "Plateau",
  "outputRows.flushNotRecorded": "Flush ordered and not recorded",
  "outputRows.dry": "Dry",
  "outputRows.low": "Low",
  "outputRows.high": "High",
  "outputRows.suddenDrop": "Sudden drop",
  "outputRows.chestTube": "Chest tube",
  "outputRows.sessions": "Sessions",
  "outputRows.newFluid": "New fluid",
  "outputRows.plausibility": "A question about a volume",
  tubeOut: "Tube out",
  redFlags: "Red flag",
  "calls.collectionEvery": "Calls of a collection drain",
  "calls.trialOn": "Calls of a trial",
  "calls.beforeExchange": "Calls before an exchange",
  "calls.afterRemoval": "Calls after a removal",
  "calls.diaryMissing": "Calls about a diary that stops",
  "calls.notReached": "Not reached",
  "calls.rungs": "Still not reached",
  "calls.hours": "Hours of calls",
  "calls.whereaboutsEvery": "Whereabouts of an inpatient",
  "calls.questions": "Question",
  bleeding: "Bleeding risk",
  "planning.room": "Room",
  "planning.upsize": "Step when upsizing",
  "planning.wire": "Length of a wire",
  "planning.release": "Letting go of",
  "planning.notOverWire": "Not over a wire",
  "planning.readyF": "Kept ready",
  "planning.findInsides": "Unknown insides",
  "planning.reasons": "Reasons",
  "planning.besideStent": "Removal of a nephrostomy beside a stent",
  "visits.prerequisites": "Before a visit",
  "visits.confirmed": "A visit is confirmed",
} as const satisfies Readonly<Record<string, string>>;

export type RowPath = keyof typeof rowNames;

const isNamed = (path: string): path is RowPath => Object.hasOwn(rowNames, path);

/** What a sort of row is called; its path where nobody has called it anything. */
export const rowName = (path: string): string => (isNamed(path) ? rowNames[path] : path);

/** Every sort of row in a group of them: "calls" has "calls.trialOn" and more. */
export const rowPathsIn = (group: string): readonly RowPath[] =>
  (Object.keys(rowNames) as RowPath[]).filter((path) => path.startsWith(`${group}.`));

/** "nephrostomy, suprapubic catheter"; of an empty list: any. */
export const kindsOf = ({ kinds }: { readonly kinds: readonly string[] }): string =>
  kinds.length === 0 ? "any" : kinds.join(", ");

const wordsIn = (row: object, name: string): readonly string[] => {
  const words: unknown = Reflect.get(row, name);
  return Array.isArray(words) ? words.map(String) : [];
};

/** "exchange and check of nephrostomy", "removal of any tube". */
const actsOf = (acts: readonly string[], kinds: readonly string[]): string =>
  `${andList(acts)} of ${kinds.length === 0 ? "any tube" : kindsOf({ kinds })}`;

/** Whose row of a list it is: by its id, its kind, its kinds, what they are held by, or what is done or settled at a visit. */
export function whoseRow(row: object): string {
  const key = keyOf(row);
  if (key !== null) return key;
  const kinds = [...wordsIn(row, "kinds"), ...wordsIn(row, "retentions")];
  const acts = wordsIn(row, "acts");
  const whose = acts.length === 0 ? kindsOf({ kinds }) : actsOf(acts, kinds);
  return "thing" in row ? `${String(row.thing)}, for ${whose}` : whose;
}

/** "Dry: nephrostomy", "Fever": a row in the fewest words that tell it from the others; null is a row of a list that is not there yet. */
export const rowCalled = (path: string, isList: boolean, row: object | null): string =>
  isList && row !== null ? `${rowName(path)}: ${whoseRow(row)}` : rowName(path);
