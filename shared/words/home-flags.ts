import { shutModes } from "#shared/output/low-day.ts";
import { flushIsOrdered } from "#shared/output/output-of-tube.ts";
import { type Level, levels } from "#shared/protocol/levels.ts";
import type { OutputRows } from "#shared/protocol/output-rows.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import { hasBalloon } from "#shared/tube/has-balloon.ts";
import type { OutGroup, OutputGroup } from "#shared/tube/kind/define.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { type DiaryUnit, rowAmount } from "#shared/words/diary-sheet.ts";

/** Red flags of one level for one tube, each with the clinic's own act until somebody is reached; null is "no row". */
export type HomeFlags = {
  readonly head: string;
  readonly flags: readonly { readonly says: string; readonly untilReached: string | null }[];
};

type Asked = {
  readonly tube: TubeState;
  readonly output: OutputRows | null;
  /** What amounts are told in. */
  readonly unit: DiaryUnit;
};
/** A row in plain words; more than one where another row splits it by level, none where it does not speak of the tube. */
type Telling = (asked: Asked) => readonly { readonly says: string; readonly level?: Level }[];

const any =
  (says: string): Telling =>
  () => [{ says }];

const where =
  (applies: (tube: TubeState) => boolean, says: string): Telling =>
  ({ tube }) =>
    applies(tube) ? [{ says }] : [];

const liesIn =
  (...groups: readonly OutGroup[]) =>
  ({ kind }: TubeState): boolean =>
    groups.some((group) => group === kindOf(kind).ifOut);

const measuredAs =
  (...groups: readonly OutputGroup[]) =>
  ({ kind }: TubeState): boolean =>
    groups.some((group) => group === kindOf(kind).output);

const isShut = ({ mode, trial }: TubeState): boolean =>
  shutModes.includes(mode) || trial?.state === "running";

/** By the rows of output for this kind, which may ask for more where there is no other way out. */
const dry: Telling = ({ tube, output }) =>
  (output?.dry ?? [])
    .filter(({ kinds }) => kinds.includes(tube.kind))
    .flatMap(({ hours, level, onlyWayOut }) => {
      const says = `nothing coming out for ${hours} hours`;
      const only = `${says}, if this is your only kidney or a transplanted one, or no urine comes any other way`;
      return [{ says, level }, ...(onlyWayOut === null ? [] : [{ says: only, level: onlyWayOut }])];
    });

const muchBile: Telling = ({ tube, output, unit }) => {
  if (!measuredAs("bile")(tube)) return [];
  const row = output?.high.find(({ kinds }) => kinds.includes(tube.kind));
  return [
    {
      says:
        row === undefined
          ? "dizziness"
          : `more bile than ${rowAmount(row.overMlPer24h, unit)} in 24 hours, or dizziness`,
    },
  ];
};

/**
 * Rows of the example table in plain words, and which tubes they speak of. By the row's own words: a row that the clinic has worded
 * itself is printed as it stands, for any tube.
 */
const plainRows: Readonly<Record<string, Telling>> = {
  "breathlessness or chest pain with any tube": any("shortness of breath or chest pain"),
  "chest tube out or disconnected": where(
    measuredAs("chest", "pleural"),
    "the tube in your chest out or disconnected",
  ),
  "heavy bright bleeding": any("heavy, bright red bleeding"),
  collapse: any("collapsing or passing out"),
  "severe abdominal pain after a feed, or with fresh blood or feed leaking soon after placement": where(
    liesIn("stomach or bowel"),
    "severe belly pain after a feed, or with fresh blood or feed leaking soon after the tube was placed",
  ),
  "fever on chemotherapy or other immune suppression": any(
    "fever on chemotherapy, or when your defenses are weakened in another way",
  ),
  "shaking chills with confusion, faintness or fast breathing": any(
    "shaking chills with confusion, feeling faint or breathing fast",
  ),
  "cord injury at T6 or above with headache, sweating and a blocked bladder drain": where(
    liesIn("bladder"),
    "headache and sweating with a blocked bladder drain, if you have a spinal cord injury at T6 or above",
  ),
  "38.0 C and over, shaking chills, or feels very unwell": any(
    "a temperature of 38.0 °C (100.4 °F) or more, shaking chills, or feeling very unwell",
  ),
  "tube out or partly out": any("the tube out, or part of the way out"),
  "dry by the rows of output": dry,
  "new blood, clots, bile, feces, pus, food or urine where it was not": any(
    "new blood, clots, bile, stool, pus, food or urine where there was none",
  ),
  "soaking leak": any("a leak that soaks the dressing"),
  "painful or failed flush": where(flushIsOrdered, "a flush that hurts or does not go in"),
  "capped trial with pain, fever, jaundice or leak": where(
    isShut,
    "pain, fever, yellow skin or eyes, or a leak while the tube is shut",
  ),
  "external bile over its row, or dizziness": muchBile,
  "skin redness": any("red skin round the tube"),
  "loose fixation": any("what holds the tube at the skin coming loose"),
  "supplies run out": any("supplies running out"),
  "balloon loss with the tube secure": where(
    hasBalloon,
    "the balloon losing water while the tube sits firmly",
  ),
};

const heads = {
  "emergency services": "Call emergency services for",
  "on call now": "Call now, at any hour, for",
  "same day": "Call the same day for",
  "next working day": "Call on the next working day for",
} as const satisfies Record<Level, string>;

/** The red flags of the clinic's table that speak of a tube, or of any of several, each once, in plain words, the most urgent level first. */
export function homeFlags(
  rows: readonly RedFlagRow[],
  asked: Asked | readonly Asked[],
): readonly HomeFlags[] {
  const told = rows.flatMap(({ says, level, untilReached }) => {
    const telling = (Object.hasOwn(plainRows, says) ? plainRows[says] : undefined) ?? any(says);
    const flags = [asked]
      .flat()
      .flatMap((one) => telling(one).map((plain) => ({ level, ...plain, untilReached })));
    return flags.filter(
      (flag, n) => flags.findIndex((other) => other.says === flag.says && other.level === flag.level) === n,
    );
  });
  return levels
    .map((level) => ({ head: heads[level], flags: told.filter((flag) => flag.level === level) }))
    .filter(({ flags }) => flags.length > 0)
    .map(({ head, flags }) => ({
      head,
      flags: flags.map(({ says, untilReached }) => ({ says, untilReached })),
    }));
}
