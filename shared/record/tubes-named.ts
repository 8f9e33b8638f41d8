import type { Entry, FormContext } from "#shared/record/form.ts";
import { ruleOf } from "#shared/tube/event-kinds.ts";

/** The tubes that an entry names: the one that its form speaks of, the one that it opens, or none. */
export function tubesNamed({ kind }: Pick<Entry, "kind">, { tube, opens }: FormContext): readonly string[] {
  const here = tube === null ? [] : [tube.id];
  if (kind === "placed" || kind === "taken over") return [opens.tubeId];
  if (kind === "converted") return [...here, opens.tubeId];
  return ruleOf(kind).tubes === 0 ? [] : here;
}
