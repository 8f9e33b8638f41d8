import type { Json } from "#shared/case/json.ts";
import type { Looking } from "#shared/case/looking.ts";
import { printWhen } from "#shared/day/print-day.ts";
import { factWords } from "#shared/record/field/fact-words.ts";
import { printSize } from "#shared/record/field/length-field.ts";
import { type Age, catheterAge, tractAge } from "#shared/tube/clocks.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import { tubeTitle } from "#shared/tube/name.ts";
import type { TubeState } from "#shared/tube/state.ts";

const plain = (value: string): string => value;

const ageWords = (age: Age): Json => (age.known ? age.days : "unknown");

/** What a tube is on a day: identity, facts with how well they are known, both clocks. */
export function tubeAnswer({ state, today }: Looking, tube: TubeState): Json {
  const { inside, ending, plan, balloonMl } = tube;
  return {
    name: tubeTitle(tube),
    kind: kindOf(tube.kind).name,
    side: factWords(tube.side, plain),
    role: tube.role,
    mode: tube.mode,
    status: tube.status,
    ended: ending === null ? null : { by: ending.kind, when: printWhen(ending.when) },
    size: factWords(tube.size, (length) => printSize("tube outside", length)),
    sizeCertainty: tube.size.certainty,
    takes: factWords(inside.takes, (length) => printSize("takes", length)),
    externalLength: factWords(tube.externalLength, (length) => printSize("external length", length)),
    heldBy: factWords(tube.retention, plain),
    balloon: factWords(balloonMl, (ml) => `${ml} mL`),
    concerns: tube.concerns,
    takenOverFrom: tube.takenOverFrom,
    inSince: printWhen(tube.catheter.since),
    catheterAge: ageWords(catheterAge(tube, today)),
    punctured: printWhen(tube.tract.since),
    tractAge: ageWords(tractAge(tube, today)),
    plan: plan === null ? null : { act: plan.act, by: plan.by, byWhom: plan.byWhom, reason: plan.reason },
    unverified: tube.unverified !== null,
    tubes: state.tubes.length,
    contradictions: state.contradictions.filter(({ tubeId }) => tubeId === tube.id).map(({ code }) => code),
  };
}
