import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { planTold } from "#shared/case/planned-answer.ts";
import { type Telling, told } from "#shared/case/telling.ts";
import type { WirePassage } from "#shared/fit/passage.ts";
import { passageByState } from "#shared/fit/wire-passage.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { sizeLine, stateLine } from "#shared/words/passage.ts";

const answerOf = ({ bySize, byState }: WirePassage): Json => ({
  bySize: bySize.verdict,
  sizeLine: sizeLine(bySize),
  byState: byState.state,
  stateLine: stateLine(byState),
});

/** The wire of a planned exchange through the tube in place and the tube to come: by size and by state. */
export function passageAnswer(given: Given<"passage">, looking: Looking, tube: TubeState): Telling<Json> {
  const said = planTold(given, looking, tube);
  if (said.kind !== "told") return said;
  const { throughOld, throughNew } = said.value;
  const [toCome] = throughNew.pairs;
  return told({
    inPlace: answerOf({ bySize: throughOld.pair.bySize, byState: throughOld.byState }),
    ...(toCome !== undefined && {
      toCome: answerOf({ bySize: toCome.bySize, byState: passageByState(undefined) }),
    }),
  });
}
