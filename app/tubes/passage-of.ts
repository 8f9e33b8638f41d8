import type { TubePage } from "#app/tubes/tube-page.ts";
import type { PassageRows } from "#shared/fit/passage.ts";
import { type PlannedPassages, plannedPassages, type TubeInPlace } from "#shared/fit/planned-passages.ts";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";

/** The clinic's rows for a measured bore. None is made for a child: the example table is for adults. */
export const rowsOf = ({ row, passage }: TubePage): PassageRows =>
  row.found === "no example for a child"
    ? { clearance: undefined, boreTolerance: undefined }
    : { clearance: passage.clearance, boreTolerance: passage.boreTolerance };

/** What a wire meets in the tube that is in. */
export function tubeInPlaceOf({ tube, steps, today }: TubePage): TubeInPlace {
  const { inside, size, concerns } = tube;
  const pastLatest = steps.some(({ kind, latest }) => kind !== "call" && latest !== null && latest < today);
  return { inside, size, concerns, pastLatest };
}

/** The wire of the planned exchange in both tubes; null where none is planned. */
export function passagesOf(view: TubePage): PlannedPassages | null {
  const planned = view.tube.plannedExchange;
  if (planned === null) return null;
  const wire = planned.wire === null ? unknownFact : confirmed(planned.wire);
  return plannedPassages({ ...planned, wire }, tubeInPlaceOf(view), rowsOf(view));
}
