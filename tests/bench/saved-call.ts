import { connect, type Database } from "#db/sqlite.ts";
import { callContext } from "#server/calls/call-context.ts";
import { saveCall } from "#server/calls/save-call.ts";
import { now } from "#server/clock.ts";
import { newId } from "#server/ids.ts";
import { loadRecord } from "#server/record/load-record.ts";
import { questionField } from "#shared/record/call/calling-form.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import { fold } from "#shared/tube/fold.ts";
import type { Figure } from "#tests/bench/figure.ts";
import { patientsToCall } from "#tests/bench/opened-call.ts";
import { byTurns, percentile } from "#tests/bench/sample.ts";
import { people } from "#tests/support/database.ts";

const TURNS = 500;
/** Each so many calls an answer opens a red flag, which is handed over in the same act. */
const EACH_FLAGGED = 5;

type Call = { readonly patientId: string; readonly lastSeen: number; readonly texts: Texts };

/** A call that reached the patient, with every question answered. */
function callOf(db: Database, patientId: string, n: number): Call {
  const record = loadRecord(db, patientId);
  const state = fold(record.events);
  const { questions } = callContext(db, { record, state, at: now(db) });
  const flagged = n % EACH_FLAGGED === 0 ? questions.find(({ flag }) => flag !== null) : undefined;
  const answers = questions.map((question) => {
    const plain = question.opensOn === "no" ? "yes" : "no";
    return [questionField(question), question === flagged ? (question.opensOn ?? "") : plain] as const;
  });
  const texts = { outcome: "reached the patient", ...Object.fromEntries(answers) };
  return {
    patientId,
    lastSeen: state.lastSeq,
    texts: flagged === undefined ? texts : { ...texts, handedTo: "Dr Example" },
  };
}

/** A call from the form's texts to the disk with all that follows, fsync included, each time of another patient; without session and network. */
export function savedCallFigure(file: string, db: Database): Figure {
  const calls = patientsToCall(db, TURNS).map((patientId, n) => callOf(db, patientId, n));
  if (calls.length < TURNS) throw new Error("too few patients have a tube in");
  const plain = connect(`${file}-floor-of-calls.sqlite`);
  plain.sqlite.exec("create table one (at real) strict");
  const insert = plain.sqlite.prepare("insert into one values (?)");
  const doing = { db, staff: people.caller };
  let turn = 0;
  let flags = 0;
  const times = byTurns(
    TURNS,
    () => {
      const call = calls[turn++];
      if (call === undefined) throw new Error("no call is left");
      flags += saveCall(doing, { actId: newId(), ...call }).flags.length;
    },
    () => insert.run(performance.now()),
  );
  plain.sqlite.close();
  if (flags !== TURNS / EACH_FLAGGED) throw new Error("a red flag was not raised");
  return {
    what: "a call saved with all that follows, p99",
    value: percentile(times.ours, 99),
    unit: "ms",
    floor: { is: "one row of one number, fsync included, p99", value: percentile(times.floor, 99) },
    aim: { kind: "at most", value: 15 },
  };
}
