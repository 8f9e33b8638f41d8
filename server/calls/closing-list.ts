import { callOrder, countCalls } from "#db/queries/call-lines.ts";
import { clinicOf } from "#db/queries/clinic.ts";
import { overnight } from "#db/queries/step-lists.ts";
import type { Database } from "#db/sqlite.ts";
import { callLines, callNow, EVER } from "#server/calls/call-list.ts";
import { lineOf } from "#server/lists/list-line.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";

import { everything } from "#shared/record/list-filter.ts";
import { shutOn } from "#shared/words/against.ts";
import { flagHolder } from "#shared/words/closing-list.ts";

/** Lines of each part; how many stand behind them is told. */
const MOST = 200;

/** What is still open at the end of a day, and who has it until the next: red flags that nobody has first. */
export function closingList(db: Database) {
  const at = callNow(db);
  const { today } = at;
  const of = { today, limit: MOST, skip: 0, filter: everything };
  const steps = overnight.lines(db, of).map((row) => lineOf(row, today));
  const kindIs = (...kinds: readonly string[]) => steps.filter(({ step }) => kinds.includes(step.kind));
  const flags = kindIs("red flag");
  const ids = callOrder(db, { ...at, limit: MOST, skip: 0 });
  return {
    ...at,
    flags: [
      ...flags.filter(({ step }) => flagHolder(step) === null),
      ...flags.filter(({ step }) => flagHolder(step) !== null),
    ],
    trials: kindIs("clamp trial").map((line) => ({
      ...line,
      covers:
        callLines(db, [line.patient.id], today)[0]?.story.trials.find(
          ({ tubeId }) => tubeId === line.tube?.id,
        )?.covers ?? null,
    })),
    out: kindIs("tube out", "part out", "fragment retained"),
    alarms: kindIs("alarm"),
    calls: callLines(db, ids, today),
    totals: { steps: overnight.count(db, of), calls: countCalls(db, { after: EVER, to: today }) },
    most: MOST,
    shut: shutOn(today, viewProtocol(db).calendar),
    clinic: { name: clinicOf(db).name, phone: clinicOf(db).phone },
  };
}
