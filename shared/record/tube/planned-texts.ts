import type { Texts } from "#shared/record/field-spec.ts";
import type { RenewalKind } from "#shared/record/tube/renewal-form.ts";
import { factText } from "#shared/shelf/type-texts.ts";
import type { Length, LengthUnit } from "#shared/size/length.ts";
import { printExactly } from "#shared/size/print-exactly.ts";
import { known } from "#shared/tube/certainty.ts";
import { type ExchangePlanned, exchangePlanOf } from "#shared/tube/exchange-planned.ts";
import type { TubeState } from "#shared/tube/state.ts";

type Planned = Pick<TubeState, "size" | "plannedExchange">;

const inUnits =
  (...units: [LengthUnit, ...LengthUnit[]]) =>
  (length: Length): string =>
    printExactly(length, units);

/** Which act a planned exchange becomes when it is done: another size is an upsize or a downsize, where both sizes are known. */
export function plannedAct({
  size,
  plannedExchange,
}: Planned): Extract<RenewalKind, "exchanged" | "upsized" | "downsized"> {
  const old = known(size);
  const next = plannedExchange === null ? undefined : known(plannedExchange.size);
  if (old === undefined || next === undefined || old === next) return "exchanged";
  return next > old ? "upsized" : "downsized";
}

/** What was planned, as it is typed into the exchange: the tube to come by what its package says, and by its name where that is on the shelf. */
export function plannedTexts(planned: ExchangePlanned, onShelf: readonly { readonly name: string }[]): Texts {
  const { toCome } = exchangePlanOf(planned);
  const named = onShelf.some(({ name }) => name === toCome.name);
  return {
    size: factText(planned.size, inUnits("F", "mm")),
    takes: factText(planned.takes, inUnits("in", "mm")),
    fullLength: factText(toCome.length, inUnits("cm", "mm")),
    ...(named && { shelf: toCome.name }),
  };
}
