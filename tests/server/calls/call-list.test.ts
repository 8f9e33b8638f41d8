import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { patientById } from "#db/queries/patients.ts";
import type { Database } from "#db/sqlite.ts";
import { takeHold } from "#server/calls/hold-patient.ts";
import { newId } from "#server/ids.ts";
import { correctPatient, detailsOf } from "#server/patients/correct-patient.ts";
import { patientTexts } from "#shared/record/patient/patient-texts.ts";
import { flagHanded, flagRaised, rang } from "#tests/support/call-factories.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { type Entry, fellOut, placed, trialStarted } from "#tests/support/factories.ts";
import { ago, TODAY } from "#tests/support/listed-clinic.ts";
import { addInventedPatient, recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

/** Fri 6 Nov 2026, noon in London: afternoon by the example rows begins at twelve. */
const at = (time: string) => vi.setSystemTime(new Date(`${TODAY}T${time}:00Z`));
beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"] });
  at("12:00");
});
afterEach(() => {
  vi.useRealTimers();
});

/** One patient with these entries under a name, which is the patient's id too. */
function record(db: Database, name: string, entries: readonly Entry[]): void {
  addInventedPatient(db, name, `number of ${name}`);
  recordAs(
    db,
    entries.map((entry) => ({ ...command(entry), eventId: entry.id ?? newId() })),
    name,
  );
}

/** A drain of a collection, about which somebody was last reached so many days ago: called again after 7 to 14. */
const drain = (tube: string, reached: number): Entry[] => [
  placed({ tube, kind: "abscess drain", side: "not sided", on: ago(30) }),
  rang({ on: ago(reached), at: "10:00", outcome: "reached the patient" }),
];
/** When a patient is best reached, and by which clock, as the patient's form writes it. */
function reachedAt(
  db: Database,
  patientId: string,
  { bestTimes, livesIn }: { readonly bestTimes: string | null; readonly livesIn: string | undefined },
): void {
  const row = patientById(db, patientId);
  if (row === undefined) throw new Error(`no patient ${patientId}`);
  const telephones = bestTimes === null ? "555 0117" : `555 0117 ${bestTimes}`;
  const texts = { ...patientTexts(detailsOf(db, row)), telephones, livesIn: livesIn ?? "" };
  correctPatient(
    { db, staff: people.nurse },
    { actId: newId(), patientId, texts, lastUpdatedAt: row.updatedAt },
  );
}

const nephrostomy = (tube: string, days: number): Entry => placed({ tube, on: ago(days) });
const calls = (db: Database) => callerAs(db, people.caller).calls;
const due = async (db: Database) =>
  (await calls(db).list({ which: "due", page: 1 })).lines.map(({ patient }) => patient.id);

/** One for each reason of the order, told in another order than they are rung. */
function clinic(): Database & Disposable {
  const db = testDatabase();
  record(db, "past latest", [nephrostomy("past latest", 30)]);
  record(db, "first hours", [nephrostomy("first hours", 2)]);
  record(db, "told again", [...drain("told again", 9)]);
  record(db, "one tried", [...drain("one tried", 10), rang({ on: ago(1), at: "10:00" })]);
  record(db, "trial", [
    nephrostomy("trial", 60),
    trialStarted({ tube: "trial", on: ago(1), covers: "the ward" }),
  ]);
  record(db, "flag", [nephrostomy("flag", 20), flagRaised({ id: "flag-of", on: TODAY, at: "09:00" })]);
  record(db, "later", [nephrostomy("later", 20), rang({ on: ago(1), outcome: "reached the patient" })]);
  return db;
}

describe("the call list", () => {
  it("is rung in the order of the reasons: red flag, trials and first hours, past latest, fewest attempts, the longest due", async () => {
    using db = clinic();
    expect(await due(db)).toEqual(["flag", "trial", "first hours", "past latest", "one tried", "told again"]);
  });

  it("a red flag that somebody has stands before nobody", async () => {
    using db = clinic();
    record(db, "handed", [
      nephrostomy("handed", 2),
      flagRaised({ id: "other", on: TODAY, at: "09:00" }),
      flagHanded({ flag: "other", on: TODAY, at: "09:10" }),
    ]);
    const list = await due(db);
    expect(list[0]).toBe("flag");
    expect(list).toContain("handed");
  });

  it("whoever asked for a time comes when it has come, and stands with it before", async () => {
    using db = testDatabase();
    for (const [name, backAt] of [
      ["evening", "18:00"],
      ["noon", "11:30"],
    ] as const)
      record(db, name, [
        ...drain(name, 9),
        rang({ on: ago(1), at: "10:00", outcome: "call back", back: TODAY, backAt }),
      ]);
    expect(await due(db)).toEqual(["noon", "evening"]);
    const { lines } = await calls(db).list({ which: "due", page: 1 });
    expect(lines.map(({ nextTime }) => nextTime)).toEqual(["11:30", "18:00"]);
  });

  it("whoever it is the best time of comes first of those alike, by their own clock; of whom none is known before whose it is not", async () => {
    using db = testDatabase();
    // Noon in London is 07:00 in New York and 21:00 in Tokyo, by the IANA time zone database, in November.
    for (const [name, bestTimes, livesIn] of [
      ["a: later today", "after 5 pm", undefined],
      ["b: nobody said", null, undefined],
      ["c: now", "11:30-13:00", undefined],
      ["d: now there", "evenings or 20:00-22:00", "Asia/Tokyo"],
      ["e: night there", "mornings", "America/New_York"],
      ["f: not understood", "when she is back", undefined],
    ] as const) {
      record(db, name, [...drain(name, 9)]);
      reachedAt(db, name, { bestTimes, livesIn });
    }
    const order = ["c: now", "d: now there", "b: nobody said", "f: not understood"];
    expect(await due(db)).toEqual([...order, "a: later today", "e: night there"]);
    at("17:30");
    expect((await due(db)).slice(0, 2)).toEqual(["a: later today", "b: nobody said"]);
    const { lines } = await calls(db).list({ which: "due", page: 1 });
    expect(lines.find(({ patient }) => patient.id.startsWith("d"))?.there).toEqual({
      zone: "Asia/Tokyo",
      time: "02:30",
      aheadMinutes: 540,
    });
  });

  it("who needs an interpreter comes last of those alike, and says so", async () => {
    using db = testDatabase();
    for (const name of ["a", "b", "c"]) record(db, name, [...drain(name, 9)]);
    db.sqlite.prepare("update patients set needs_interpreter = 1, language = 'Farsi' where id = 'a'").run();
    expect(await due(db)).toEqual(["b", "c", "a"]);
  });

  it("the order in which patients were recorded changes nothing", async () => {
    using db = clinic();
    const entries = ["z", "y", "x"];
    for (const name of entries) record(db, name, [...drain(name, 9)]);
    expect((await due(db)).slice(-3)).toEqual(["x", "y", "z"]);
  });

  it("a page holds forty, and the next goes on without a gap or a patient twice", async () => {
    using db = testDatabase();
    const names = Array.from({ length: 43 }, (_one, index) => `p${String(index).padStart(2, "0")}`);
    for (const name of names) record(db, name, [...drain(name, 9)]);
    const pages = await Promise.all([1, 2].map((page) => calls(db).list({ which: "due", page })));
    expect(pages.map(({ lines, total }) => [lines.length, total])).toEqual([
      [40, 43],
      [3, 43],
    ]);
    expect(pages.flatMap(({ lines }) => lines.map(({ patient }) => patient.id))).toEqual(names);
  });

  it("says who has a patient now, and forgets it when it is let go", async () => {
    using db = clinic();
    takeHold({ db, staff: people.nurse }, { patientId: "flag" });
    const holder = async () => (await calls(db).list({ which: "due", page: 1 })).lines[0]?.holder;
    expect(await holder()).toBe("Tansy Nurseworth");
    at("12:31");
    expect(await holder()).toBeNull();
  });

  it("counts who comes up in the next seven days, and lists them", async () => {
    using db = testDatabase();
    record(db, "soon", drain("soon", 3));
    const { counts, lines } = await calls(db).list({ which: "coming", page: 1 });
    expect(counts).toEqual({ due: 0, coming: 1 });
    expect(lines.map(({ patient, dueOn }) => [patient.id, dueOn])).toEqual([["soon", "2026-11-10"]]);
    expect(await due(db)).toEqual([]);
  });

  it("hard case 40: on a closed day says who covers the trials that run", async () => {
    const closures = [{ from: TODAY, to: TODAY, reason: "moving house" }];
    using db = testDatabase({ isDemo: false, closures });
    record(db, "trial", [
      nephrostomy("trial", 60),
      trialStarted({ tube: "trial", on: ago(1), covers: "the ward" }),
    ]);
    const { closed } = await calls(db).list({ which: "due", page: 1 });
    expect(closed).toMatchObject({
      because: "moving house",
      trials: [{ covers: "the ward", familyName: "Brackenfold" }],
    });
  });

  it("as a file has each line once in its order, and guards what a spreadsheet would run", async () => {
    using db = clinic();
    db.sqlite.prepare("update patients set family_name = '=HYPERLINK' where id = 'trial'").run();
    const { name, text } = await callerAs(db, people.nurse).calls.file();
    expect(name).toBe("calls-2026-11-06.csv");
    expect(text.trimEnd().split("\r\n")).toHaveLength(7);
    expect(text).toContain("'=HYPERLINK");
  });
});

describe("the call list on paper", () => {
  it("asks by role, with numbers, what an answer opens, and EXAMPLE while nobody approved the rows", async () => {
    using db = clinic();
    const { patients, isExample, total } = await calls(db).paper({ share: 1, of: 1 });
    expect(isExample).toBe(true);
    expect(patients.map(({ patient }) => patient.id)).toEqual(await due(db));
    expect(total).toBe(6);
    const flagged = patients.flatMap(({ questions }) => questions).filter(({ flag }) => flag !== null);
    expect(flagged.length).toBeGreaterThan(0);
    const trial = patients.find(({ patient }) => patient.id === "trial");
    expect(trial?.questions.length).toBeGreaterThan(0);
  });

  it("is dealt to callers in turns: each has the urgent first, nobody is on two sheets or on none", async () => {
    using db = clinic();
    const shares = await Promise.all([1, 2].map((share) => calls(db).paper({ share, of: 2 })));
    const [one, two] = shares.map(({ patients }) => patients.map(({ patient }) => patient.id));
    expect(one).toEqual(["flag", "first hours", "one tried"]);
    expect(two).toEqual(["trial", "past latest", "told again"]);
  });

  it("is written down as printed", async () => {
    using db = clinic();
    await calls(db).paper({ share: 1, of: 1 });
    await calls(db).closing();
    const reads = db.sqlite.prepare("select subject_kind, subject_id from reads order by id").raw().all();
    expect(reads).toEqual([
      ["print", "calls"],
      ["print", "the day's closing list"],
    ]);
  });
});

describe("the day's closing list", () => {
  it("has red flags that nobody has first, trials with who covers, tubes out, and the calls not made", async () => {
    using db = clinic();
    record(db, "handed", [
      nephrostomy("handed", 2),
      flagRaised({ id: "other", on: ago(1), at: "09:00" }),
      flagHanded({ flag: "other", on: ago(1), at: "09:10" }),
    ]);
    record(db, "trial to come", [
      nephrostomy("trial to come", 20),
      trialStarted({ tube: "trial to come", on: TODAY }),
    ]);
    record(db, "out", [nephrostomy("out", 20), fellOut({ tube: "out", on: TODAY })]);
    const { flags, trials, out, alarms, calls: open, totals } = await calls(db).closing();
    const names = (lines: readonly { readonly patient: { readonly id: string } }[]) =>
      lines.map(({ patient }) => patient.id);
    expect(names(flags)).toEqual(["flag", "handed"]);
    expect(trials.map(({ patient, covers, step }) => [patient.id, covers, step.dueOn])).toEqual([
      ["trial", "the ward", TODAY],
      ["trial to come", null, "2026-11-07"],
    ]);
    expect(names(out)).toEqual(["out"]);
    expect(alarms).toEqual([]);
    expect(names(open)).toEqual(await due(db));
    expect(totals.calls).toBe(open.length);
  });
});
