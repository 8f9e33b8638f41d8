import type { Database } from "#db/sqlite.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";
import { formContext } from "#server/record/form-context.ts";
import type { PatientRecord } from "#server/record/load-record.ts";
import { flagOfOut, oneBelow, type Tract } from "#shared/call/tube-out.ts";
import type { Instant } from "#shared/day/instant.ts";
import { tubeOutRow } from "#shared/protocol/find-tube-out.ts";
import { tractAges } from "#shared/protocol/tract-ages.ts";
import type { OutContext, TubeThatMayBeOut } from "#shared/record/call/out-context.ts";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import { tubeInForm } from "#shared/record/tube-in-form.ts";
import { rowFor } from "#shared/step/dated-steps.ts";
import { ageOf } from "#shared/step/open-steps.ts";
import { slowToHeal } from "#shared/tube/slow-to-heal.ts";
import type { PatientTubes, TubeState } from "#shared/tube/state.ts";

type OfPatient = { readonly record: PatientRecord; readonly state: PatientTubes };

/** The tract by the row that the tube goes by, as its own page has it. */
export function tractOf(tube: TubeState, { record: { books }, state }: OfPatient): Tract {
  const protocol = books.protocol(tube.pins.protocol);
  const { conditions } = state;
  const row = rowFor({ tube, conditions, age: ageOf(tube, books.bornOn), protocol });
  const slow = slowToHeal(conditions).yes.length > 0;
  return {
    since: tube.tract.since.latest ?? tube.tractBy,
    ages: row.found === "row" ? tractAges(row.row, { route: tube.route, slowToHeal: slow }) : null,
  };
}

/** Each tube with what the newest table says of it once it is out. */
function tubesThatMayBeOut(db: Database, of: OfPatient): readonly TubeThatMayBeOut[] {
  const { protocol } = viewProtocol(db);
  const { tubes, conditions } = of.state;
  return tubes.flatMap((tube) =>
    numberedTubes([tube]).map((numbered) => ({
      ...numbered,
      inSince: tubeInForm(tube).inSince,
      tract: tractOf(tube, of),
      slow: slowToHeal(conditions),
      rows: {
        out: tubeOutRow(protocol, tube.kind, "out") ?? null,
        "part out": tubeOutRow(protocol, tube.kind, "part out") ?? null,
      },
      flag: flagOfOut(tube, of.state, protocol),
      size: tube.size,
      below: oneBelow(tube.size, protocol.planning?.upsize ?? null),
    })),
  );
}

/** What a tube that is out is recorded beside. Throws what a closed record refuses. */
export function outContext(db: Database, at: Instant, of: OfPatient): OutContext {
  const { tube: _tube, ...context } = formContext(db, at, { patientId: of.record.patient.id, tubeId: null });
  return { ...context, tubes: tubesThatMayBeOut(db, of) };
}
