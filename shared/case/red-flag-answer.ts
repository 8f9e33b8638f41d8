import { type Asked, openedBy, questionsOf } from "#shared/call/questions.ts";
import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { mistake, type Telling, told } from "#shared/case/telling.ts";
import { whichTube } from "#shared/case/which-tube.ts";

type Question = Pick<Given<"red-flag">, "question" | "tube" | "answer">;

/** The question as it is asked of the patient, or of the tube that is meant; null: it is not asked of them. */
function askedAs({ question, tube }: Question, { state, protocol }: Looking): Telling<Asked | null> {
  const rows = protocol.calls?.questions ?? [];
  const row = rows.find(({ id }) => id === question);
  if (row === undefined)
    return mistake("case-question-unknown", { question, questions: rows.map(({ id }) => id).join(", ") });
  const asked = questionsOf([row], state);
  if (row.of === "the patient") return told(asked[0] ?? null);
  const meant = whichTube(state.tubes, tube);
  if (meant.kind !== "told") return meant;
  return told(asked.find((one) => one.tube?.id === meant.value.id) ?? null);
}

/** Which red flag an answer opens, by what is known of the patient; and which it would open if what nobody knows held. */
export function redFlagAnswer(given: Question, looking: Looking): Telling<Json> {
  const read = askedAs(given, looking);
  if (read.kind !== "told") return read;
  const asked = read.value;
  if (asked === null) return told({ asked: false, redFlag: null, ifSo: [] });
  const isOpened = asked.row.opensOn === given.answer;
  const { flag, ifSo } = openedBy(asked, looking.state, looking.protocol);
  return told({
    asked: true,
    redFlag:
      flag === null || !isOpened
        ? null
        : { row: flag.id, level: flag.level, says: flag.says, untilReached: flag.untilReached },
    ifSo: isOpened ? ifSo.map(({ of, flag: other }) => ({ of, row: other.id, level: other.level })) : [],
    thenRecord: isOpened ? asked.row.thenRecord : null,
  });
}
