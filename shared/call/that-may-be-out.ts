import { flagOfOut, oneBelow } from "#shared/call/tube-out.ts";
import { tubeOutRow } from "#shared/protocol/find-tube-out.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { tractAges } from "#shared/protocol/tract-ages.ts";
import type { TubeThatMayBeOut } from "#shared/record/call/out-context.ts";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import { tubeInForm } from "#shared/record/tube-in-form.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { ageOf, type Books } from "#shared/step/open-steps.ts";
import { slowToHeal } from "#shared/tube/slow-to-heal.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

type Beside = {
  readonly state: PatientTubes;
  readonly books: Pick<Books, "protocol" | "bornOn">;
  /** What is said of a tube that is out is always the newest; the ages of its tract are of the version that it goes by. */
  readonly newest: Protocol;
};

/** A tube with what the table says of it once it is out. */
export function thatMayBeOut(tube: TubeState, { state, books, newest }: Beside): readonly TubeThatMayBeOut[] {
  const { conditions } = state;
  const protocol = books.protocol(tube.pins.protocol);
  const row = rowFor({ tube, conditions, age: ageOf(tube, books.bornOn), protocol });
  const slow = slowToHeal(conditions);
  const ages =
    row.found === "row" ? tractAges(row.row, { route: tube.route, slowToHeal: slow.yes.length > 0 }) : null;
  return numberedTubes([tube]).map((numbered) => ({
    ...numbered,
    inSince: tubeInForm(tube).inSince,
    tract: { since: tube.tract.since.latest ?? tube.tractBy, ages },
    slow,
    rows: {
      out: tubeOutRow(newest, tube.kind, "out") ?? null,
      "part out": tubeOutRow(newest, tube.kind, "part out") ?? null,
    },
    flag: flagOfOut(tube, state, newest),
    size: tube.size,
    below: oneBelow(tube.size, newest.planning?.upsize ?? null),
  }));
}
