import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { mistake, type Telling, told } from "#shared/case/telling.ts";
import { exchangeAnswer } from "#shared/fit/exchange-plan.ts";
import type { WirePassage } from "#shared/fit/passage.ts";
import { planBeside } from "#shared/fit/tube-in-place.ts";
import { passageByState } from "#shared/fit/wire-passage.ts";
import { formBeside } from "#shared/record/form-beside.ts";
import { plannedExchangeForm } from "#shared/record/tube/planned-exchange-form.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { ageOf } from "#shared/step/open-steps.ts";
import { exchangePlanOf } from "#shared/tube/exchange-planned.ts";
import type { TubeState } from "#shared/tube/state.ts";
import { sizeLine, stateLine } from "#shared/words/passage.ts";

const answerOf = ({ bySize, byState }: WirePassage): Json => ({
  bySize: bySize.verdict,
  sizeLine: sizeLine(bySize),
  byState: byState.state,
  stateLine: stateLine(byState),
});

/** The wire of a planned exchange through the tube in place and the tube to come: by size and by state. */
export function passageAnswer(
  { zone, plan: typed }: Given<"passage">,
  { state, steps, now, today, protocol, books }: Looking,
  tube: TubeState,
): Telling<Json> {
  const { tubes, conditions } = state;
  const context = formBeside({ at: now, zone, tubes, tube, newTubeId: "", staff: [], shelf: [] });
  const fields = Object.keys(plannedExchangeForm.fields(context));
  const field = Object.keys(typed).find((name) => !fields.includes(name));
  if (field !== undefined)
    return mistake("case-form-lacks-field", {
      place: 0,
      form: "exchange planned",
      field,
      fields: fields.join(", "),
    });
  const read = plannedExchangeForm.read(typed, context);
  if (!read.ok) return { kind: "refused", entry: null, refusals: read.refusals };
  const row = rowFor({ tube, conditions, age: ageOf(tube, books.bornOn), protocol });
  const own = steps.filter(({ tubeId }) => tubeId === tube.id);
  const beside = planBeside({ tube, steps: own, conditions, row, rows: protocol, today });
  const plan = { ...exchangePlanOf(read.entry.payload), stiffener: null };
  const { throughOld, throughNew } = exchangeAnswer(plan, beside.tube, { rows: beside.rows, shelf: [] });
  const [toCome] = throughNew.pairs;
  return told({
    inPlace: answerOf({ bySize: throughOld.pair.bySize, byState: throughOld.byState }),
    ...(toCome !== undefined && {
      toCome: answerOf({ bySize: toCome.bySize, byState: passageByState(undefined) }),
    }),
  });
}
