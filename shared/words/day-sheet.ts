import type { PrerequisiteThing } from "#shared/visit/prerequisite-things.ts";
import type { Prepared } from "#shared/visit/visit.ts";
import { type Known, onRecord } from "#shared/words/on-record.ts";
import { NO_PREREQUISITE_ROW, thingLabels } from "#shared/words/prerequisites.ts";

type Before = {
  readonly open: readonly PrerequisiteThing[] | null;
  readonly known: Known;
  readonly prepared: readonly Prepared[];
};

/** What of the record stands on the sheet of whoever does it, whether or not a row asks for it; isolation comes last, as such a visit does. */
const alwaysTold = ["allergies", "blood thinners", "interpreter", "isolation"] as const;

const heads = {
  allergies: "Allergies",
  "blood thinners": "Blood thinners",
  interpreter: "Interpreter",
  isolation: "Isolation, last of the list",
} as const satisfies Record<(typeof alwaysTold)[number], string>;

const NOTHING = "nothing on record";

const answered = (thing: PrerequisiteThing, prepared: readonly Prepared[]): string => {
  const answer = prepared.find((one) => one.thing === thing);
  if (answer === undefined) return "";
  const who = answer.by === null ? "" : ` by ${answer.by}`;
  return `; for this visit: ${answer.state}${who}${answer.says === null ? "" : `, ${answer.says}`}`;
};

/** What is open before a visit, then what the record says that bears on it; nothing is judged, no hold is computed. */
export function beforeLines({ open, known, prepared }: Before): readonly string[] {
  const opened =
    open === null
      ? NO_PREREQUISITE_ROW
      : open.length === 0
        ? "All is settled that the rows ask for."
        : `Open: ${open.map((thing) => thingLabels[thing].split(",")[0]?.toLowerCase()).join(", ")}.`;
  const told = alwaysTold.map((thing) => ({
    head: heads[thing],
    says: `${onRecord(thing, known)}${answered(thing, prepared)}`,
  }));
  const unknown = told.filter(({ says }) => says === NOTHING).map(({ head }) => head.toLowerCase());
  return [
    opened,
    ...told.filter(({ says }) => says !== NOTHING).map(({ head, says }) => `${head}: ${says}.`),
    ...(unknown.length === 0 ? [] : [`Nothing on record: ${unknown.join("; ")}.`]),
  ];
}
