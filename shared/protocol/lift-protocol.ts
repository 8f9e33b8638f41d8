import { PROTOCOL_SHAPE } from "#shared/protocol/protocol.ts";

type Shape = Readonly<Record<string, unknown>>;

const isShape = (value: unknown): value is Shape =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** What an interval row of the first shape did not hold: no row of it was asked of anybody. */
const rowOfShape1 = {
  turn: "any",
  note: null,
  notExchangedBefore: null,
  immatureIfSlowUnder: null,
  matureFrom: null,
  inHospitalUnder: null,
  byRoute: [],
};

/**
 * From shape 1 (intervals, first call, escalation, passage, low output) to 2. What the older version never spoke of is "no row":
 * a date that it gave must not move because the program brings more rows today.
 */
function fromShape1(stored: Shape): Shape {
  const intervals = Array.isArray(stored.intervals)
    ? stored.intervals.map((row: unknown) => (isShape(row) ? { ...rowOfShape1, ...row } : row))
    : stored.intervals;
  return {
    ...stored,
    shape: 2,
    intervals,
    flush: [],
    balloon: null,
    tips: [],
    outputRows: null,
    tubeOut: [],
    redFlags: [],
    calls: null,
    bleeding: null,
    planning: null,
  };
}

/**
 * From shape 2 to 3. The older version held a wire against a bore by its stated size alone, which is a tolerance of nothing; of other
 * outsides, of letting go and of what is kept ready it never spoke.
 */
function fromShape2(stored: Shape): Shape {
  const { passage, planning } = stored;
  const outsideTolerance = { wire: 0, device: null, source: isShape(passage) ? passage.source : null };
  const planned = { release: [], notOverWire: [], readyF: null, findInsides: null, reasons: null };
  return {
    ...stored,
    shape: 3,
    passage: isShape(passage) ? { ...passage, outsideTolerance } : passage,
    planning: isShape(planning) ? { ...planning, ...planned } : planning,
  };
}

/** From shape 3 to 4. The older version named a fever in words alone, so that it has no row for a temperature. */
function fromShape3(stored: Shape): Shape {
  const { outputRows } = stored;
  return {
    ...stored,
    shape: 4,
    outputRows: isShape(outputRows) ? { ...outputRows, fever: null } : outputRows,
  };
}

/**
 * From shape 4 to 5. The older version told minutes of a change alone, and nothing of a second tube, of the room or of what comes before a visit.
 */
function fromShape4(stored: Shape): Shape {
  const { planning } = stored;
  const change = { acts: ["exchange"], further: null, needs: [] };
  const lifted = (rows: unknown): unknown =>
    Array.isArray(rows) ? rows.map((row: unknown) => (isShape(row) ? { ...row, ...change } : row)) : rows;
  return {
    ...stored,
    shape: 5,
    planning: isShape(planning) ? { ...planning, room: lifted(planning.room) } : planning,
    visits: null,
  };
}

/** From shape 5 to 6. The older version named what follows the attempts in words alone, and nothing of hours, of questions or of a diary that stops. */
function fromShape5(stored: Shape): Shape {
  const { calls } = stored;
  if (!isShape(calls)) return { ...stored, shape: 6 };
  const { lastly: _lastly, ...notReached } = isShape(calls.notReached) ? calls.notReached : {};
  const tried = isShape(calls.notReached) ? notReached : calls.notReached;
  const none = { diaryMissing: null, rungs: [], hours: [], questions: [] };
  return { ...stored, shape: 6, calls: { ...calls, ...none, notReached: tried } };
}

/** From shape 6 to 7. The older version never asked for anchors or sutures that are due out. */
const fromShape6 = (stored: Shape): Shape => ({ ...stored, shape: 7, anchors: [] });

/** The steps, the first from shape 1 to 2. A new shape is a step at the end, never an edit of one that was released. */
const steps: readonly ((stored: Shape) => Shape)[] = [
  fromShape1,
  fromShape2,
  fromShape3,
  fromShape4,
  fromShape5,
  fromShape6,
];

/**
 * Rows of a protocol as a release stored them, in the shape of today. A version without a shape is of the first. Pure; what is no
 * object, or of a shape that is not known, comes back as it is, for the schema to refuse.
 */
export function liftProtocol(stored: unknown): unknown {
  if (!isShape(stored)) return stored;
  const shape = stored.shape ?? 1;
  if (typeof shape !== "number" || !Number.isInteger(shape) || shape < 1 || shape > PROTOCOL_SHAPE)
    return stored;
  return steps.slice(shape - 1).reduce((lifted, step) => step(lifted), stored);
}
