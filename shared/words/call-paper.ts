import type { TryOutcome } from "#shared/call/outcomes.ts";
import { answerWords, tryOutcomes } from "#shared/call/outcomes.ts";
import type { InsteadIf } from "#shared/protocol/call-rows.ts";
import type { RedFlagRow } from "#shared/protocol/red-flag-rows.ts";
import type { Contact } from "#shared/record/patient/patient-details.ts";
import { mayBeToldText } from "#shared/words/contact.ts";

/** A number to ring: whose it is, whether they may be told, and when they are best reached. */
export type NumberLine = { readonly number: string; readonly whose: string; readonly best: string | null };

/** The patient's numbers in their order, then whoever else can be rung. A name without a number is said too. */
export function numberLines({
  telephones,
  alternate,
  homeNurse,
  referrer,
  familyDoctor,
}: Contact): readonly NumberLine[] {
  const other = (whose: string, text: string | null): readonly NumberLine[] =>
    text === null ? [] : [{ number: text, whose, best: null }];
  return [
    ...telephones.map(({ number, bestTimes }) => ({ number, whose: "the patient", best: bestTimes })),
    ...(alternate === null
      ? []
      : [
          {
            number: alternate.telephone ?? "no number",
            whose: `${alternate.name}, alternate contact: ${mayBeToldText(alternate.mayBeTold)}`,
            best: null,
          },
        ]),
    ...other("home nurse", homeNurse),
    ...other("referrer", referrer),
    ...other("family doctor", familyDoctor),
  ];
}

/** What is ticked of a try, and of a question. */
export const outcomeBoxes: readonly TryOutcome[] = tryOutcomes;
export const answerBoxes = answerWords;

type Opened = {
  readonly opensOn: "yes" | "no" | null;
  readonly flag: Pick<RedFlagRow, "level" | "says" | "untilReached"> | null;
  readonly ifSo: readonly {
    readonly of: InsteadIf;
    readonly flag: Pick<RedFlagRow, "level" | "says" | "untilReached">;
  }[];
};

const flagWords = ({
  level,
  says,
  untilReached,
}: Pick<RedFlagRow, "level" | "says" | "untilReached">): string =>
  `${level.toUpperCase()}: ${says}.${untilReached === null ? "" : ` Until somebody is reached: ${untilReached}.`}`;

/** What an answer opens, with what holds until somebody is reached; what would open another flag and is not known of the patient is said. */
export function openedLines({ opensOn, flag, ifSo }: Opened): readonly string[] {
  if (opensOn === null) return [];
  return [
    ...(flag === null ? [] : [`If ${opensOn}: ${flagWords(flag)}`]),
    ...ifSo.map(
      ({ of, flag: other }) => `If ${opensOn} and ${of}, which is not known here: ask. ${flagWords(other)}`,
    ),
  ];
}

export const callPaperCautions = [
  "Not for emergencies: red flags go by the local on-call route, which decides.",
  "Breathlessness or chest pain with any tube, and a chest tube out or disconnected: emergency services.",
  "A red flag is left only when a named person has it: write who, and when. Voicemail is not contact.",
  "Type it in later with the time at which it was, not the time of typing.",
] as const;
