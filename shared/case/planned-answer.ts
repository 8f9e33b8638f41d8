import type { Given } from "#shared/case/case-schema.ts";
import type { Json } from "#shared/case/json.ts";
import { lackingField } from "#shared/case/lacking-field.ts";
import type { Looking } from "#shared/case/looking.ts";
import { type Telling, told } from "#shared/case/telling.ts";
import { type ExchangeAnswer, exchangeAnswer } from "#shared/fit/exchange-plan.ts";
import { planBeside } from "#shared/fit/tube-in-place.ts";
import { formBeside } from "#shared/record/form-beside.ts";
import { shelfForm } from "#shared/record/shelf/shelf-form.ts";
import { plannedExchangeForm } from "#shared/record/tube/planned-exchange-form.ts";
import type { ShelfType } from "#shared/shelf/shelf-type.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { ageOf } from "#shared/step/open-steps.ts";
import { exchangePlanOf } from "#shared/tube/exchange-planned.ts";
import type { TubeState } from "#shared/tube/state.ts";
import {
  dilatorLine,
  lengthLine,
  readyLines,
  releaseLines,
  stepLine,
  tractLine,
} from "#shared/words/exchange-plan.ts";
import { sizeLine, stateLine } from "#shared/words/passage.ts";

type Asked = Omit<Given<"planned-exchange">, "entries">;

/** Types as their form takes them, one after the other. A refusal names the place of its type. */
function readShelf(typed: Asked["shelf"]): Telling<readonly ShelfType[]> {
  const shelf: ShelfType[] = [];
  for (const [index, texts] of (typed ?? []).entries()) {
    const context = { shelf, changes: null };
    const place = index + 1;
    const lacking = lackingField(texts, { form: "shelf", place, fields: shelfForm.fields(context) });
    if (lacking !== null) return lacking;
    const read = shelfForm.read(texts, context);
    if (!read.ok) return { kind: "refused", entry: place, refusals: read.refusals };
    shelf.push({ ...read.entry, id: String(index) });
  }
  return told(shelf);
}

/** A plan as it is typed, held against the tube as it is looked at. */
export function planTold(given: Asked, looking: Looking, tube: TubeState): Telling<ExchangeAnswer> {
  const { state, steps, now, today, protocol, books } = looking;
  const { tubes, conditions } = state;
  const onShelf = readShelf(given.shelf);
  if (onShelf.kind !== "told") return onShelf;
  const shelf = onShelf.value;
  const context = formBeside({ at: now, zone: given.zone, tubes, tube, newTubeId: "", staff: [], shelf });
  const fields = plannedExchangeForm.fields(context);
  const lacking = lackingField(given.plan, { form: "exchange planned", place: 0, fields });
  if (lacking !== null) return lacking;
  const read = plannedExchangeForm.read(given.plan, context);
  if (!read.ok) return { kind: "refused", entry: null, refusals: read.refusals };
  const row = rowFor({ tube, conditions, age: ageOf(tube, books.bornOn), protocol });
  const own = steps.filter(({ tubeId }) => tubeId === tube.id);
  const beside = planBeside({ tube, steps: own, conditions, row, rows: protocol, today });
  return told(exchangeAnswer(exchangePlanOf(read.entry.payload), beside.tube, { rows: beside.rows, shelf }));
}

/** The eight answers of a planned exchange, each with its verdict and its line. */
export function plannedAnswer(given: Asked, looking: Looking, tube: TubeState): Telling<Json> {
  const said = planTold(given, looking, tube);
  if (said.kind !== "told") return said;
  const { throughOld, throughNew, throughSheath, length, step, dilators, tract, ready, doubts } = said.value;
  const { pair, byState } = throughOld;
  return told({
    inPlace: {
      bySize: pair.bySize.verdict,
      sizeLine: sizeLine(pair.bySize),
      byState: byState.state,
      stateLine: stateLine(byState),
    },
    toCome: throughNew.bySize?.verdict ?? null,
    length: { verdict: length.verdict, line: lengthLine(length) },
    step: { verdict: step.verdict, line: stepLine(step), dilators: dilatorLine(dilators) },
    tract: { maturity: tract.maturity, age: tract.age, line: tractLine(tract), asks: tract.asks },
    sheath: throughSheath?.bySize?.verdict ?? null,
    release: [...releaseLines(said.value)],
    ready: [...readyLines(ready)],
    wires: Object.fromEntries(ready.wires.map(({ type, verdict }) => [type.name, verdict])),
    doubts: [...doubts],
  });
}
