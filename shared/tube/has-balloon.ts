import { known } from "#shared/tube/certainty.ts";
import { kindOf } from "#shared/tube/kind/kinds.ts";
import type { TubeState } from "#shared/tube/state.ts";

/** Whether a balloon holds it: as recorded, else as is usual for the kind. */
export const hasBalloon = ({ retention, kind }: Pick<TubeState, "retention" | "kind">): boolean =>
  (known(retention) ?? kindOf(kind).retention) === "balloon";
