import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { newId } from "#server/ids.ts";
import type { Person } from "#shared/access/person.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import type { StepList } from "#shared/step/work-list.ts";
import { callerAs } from "#tests/support/caller.ts";
import { people, testDatabase } from "#tests/support/database.ts";
import { exchanged } from "#tests/support/factories.ts";
import {
  ago,
  booked,
  listedClinic,
  nephrostomy,
  nurseLists,
  patientsIn,
  record,
  TODAY,
} from "#tests/support/listed-clinic.ts";
import { recordAs } from "#tests/support/patient.ts";
import { command } from "#tests/support/told.ts";

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(`${TODAY}T12:00:00Z`) });
});
afterEach(() => {
  vi.useRealTimers();
});

/** What the API throws where a use case refuses. */
const refusing = (refusals: readonly object[]) => ({ cause: { refusals } });

const file = (db: Database, list: StepList, filter: FilterTexts = {}) =>
  nurseLists(db).file({ list, filter });

describe("an order of one's own", () => {
  const stepOf = async (db: Database, name: string) => {
    const { placed: own, lines } = await nurseLists(db).work({ list: "overdue" });
    const line = [...own, ...lines].find(({ patient }) => patient.id === name);
    return line?.step.id ?? "";
  };
  const shown = async (db: Database, staff: Person = people.nurse) => {
    const { placed: own, lines } = await callerAs(db, staff).list.work({ list: "overdue" });
    return [patientsIn(own), patientsIn(lines)];
  };
  const four = (): Database & Disposable => {
    const db = testDatabase();
    for (const [index, name] of ["a", "b", "c", "d"].entries())
      record(db, name, [nephrostomy(name, 84 - index)]);
    return db;
  };

  it("puts a line first, moves it, and the others follow in the list's own order; nobody else sees it", async () => {
    using db = four();
    const put = async (
      name: string,
      place: Parameters<ReturnType<typeof nurseLists>["linePut"]>[0]["place"],
    ) => nurseLists(db).linePut({ list: "overdue", stepId: await stepOf(db, name), place });
    expect(await shown(db)).toEqual([[], ["a", "b", "c", "d"]]);
    await put("c", { at: "first" });
    await put("d", { at: "first" });
    expect(await shown(db)).toEqual([
      ["d", "c"],
      ["a", "b"],
    ]);
    await put("d", { at: "behind", of: await stepOf(db, "c") });
    expect(await shown(db)).toEqual([
      ["c", "d"],
      ["a", "b"],
    ]);
    expect(await shown(db, people.physician)).toEqual([[], ["a", "b", "c", "d"]]);
    expect((await file(db, "overdue")).text.match(/number of ./g)).toEqual(
      ["c", "d", "a", "b"].map((name) => `number of ${name}`),
    );
    await put("c", { at: "its own" });
    expect(await shown(db)).toEqual([["d"], ["a", "b", "c"]]);
    await nurseLists(db).ownOrderDropped({ list: "overdue" });
    expect(await shown(db)).toEqual([[], ["a", "b", "c", "d"]]);
  });

  it("counts each line once, and a line that leaves the list leaves the order", async () => {
    using db = four();
    await nurseLists(db).linePut({ list: "overdue", stepId: await stepOf(db, "c"), place: { at: "first" } });
    expect((await nurseLists(db).work({ list: "overdue" })).total).toBe(4);
    recordAs(db, [{ ...command(exchanged({ tube: "c", on: ago(0) })), eventId: newId() }], "c");
    expect(await shown(db)).toEqual([[], ["a", "b", "d"]]);
    const { placed: left } = await nurseLists(db).linePut({
      list: "overdue",
      stepId: await stepOf(db, "d"),
      place: { at: "first" },
    });
    expect(left).toBe(1);
  });
});

describe("saved filters", () => {
  const save = (
    db: Database,
    name: string,
    filter: FilterTexts = { kind: "pcn l" },
    staff: Person = people.nurse,
  ) => callerAs(db, staff).list.filterSaved({ list: "due", name, filter });

  it("stand by name for whoever saved them, in the words of an address, until dropped", async () => {
    using db = listedClinic();
    const { id } = await save(db, "My left ones");
    const { saved } = await nurseLists(db).work({ list: "due" });
    expect(saved).toEqual([{ id, name: "My left ones", filter: { kind: "nephrostomy", side: "left" } }]);
    expect((await nurseLists(db).work({ list: "overdue" })).saved).toEqual([]);
    expect((await nurseLists(db).all({})).saved).toMatchObject([{ list: "due", name: "My left ones" }]);
    expect((await callerAs(db, people.physician).list.work({ list: "due" })).saved).toEqual([]);
    await callerAs(db, people.physician).list.filterDropped({ id });
    expect((await nurseLists(db).work({ list: "due" })).saved).toHaveLength(1);
    await nurseLists(db).filterDropped({ id });
    expect((await nurseLists(db).work({ list: "due" })).saved).toEqual([]);
  });

  it("the same one saved twice is one; another of that name is refused at the name; another person's is not", async () => {
    using db = listedClinic();
    const first = await save(db, "Left");
    expect(await save(db, "left ")).toEqual(first);
    await expect(save(db, "LEFT", { side: "right" })).rejects.toMatchObject(
      refusing([{ code: "filter-name-taken", field: "name", args: { name: "Left", list: "Due" } }]),
    );
    await save(db, "Left", { side: "right" }, people.physician);
    expect((await nurseLists(db).work({ list: "due" })).saved).toHaveLength(1);
  });

  it.each<readonly [string, FilterTexts, string]>([
    [" ", { side: "left" }, "text-missing"],
    ["x".repeat(61), { side: "left" }, "text-too-long"],
    ["All", {}, "filter-shows-all"],
    ["Hoses", { kind: "hose" }, "word-unknown"],
  ])("%j of %j is refused: %s", async (name, filter, code) => {
    using db = listedClinic();
    await expect(save(db, name, filter)).rejects.toMatchObject(refusing([{ code }]));
  });
});

describe("a list as a file", () => {
  it("has the lines under the filter, days as text that sorts, and a name without anybody in it", async () => {
    using db = listedClinic();
    const { name, text } = await file(db, "unconfirmed", { visit: "with" });
    expect(name).toBe("unconfirmed-2026-11-06.csv");
    const [heads, ...lines] = text.replace("\u{feff}", "").trimEnd().split("\r\n");
    expect(heads).toMatch(/^family name,given name,birth date,number,tube,step,/);
    expect(lines).toHaveLength(3);
    expect(text).toContain("booked,2026-11-11,10:00,Far Dale General");
    expect(text).toContain("proposed,2026-11-11,09:30,here");
    expect((await file(db, "exchanges")).name).toBe("exchanges-2026-11-06.csv");
  });

  it("guards what a spreadsheet would run", async () => {
    using db = testDatabase();
    record(db, "formula", [
      nephrostomy("formula", 30),
      booked("formula", { place: { kind: "elsewhere", where: "=1+1", from: null } }),
    ]);
    expect((await file(db, "unconfirmed")).text).toContain(`,unknown,"'=1+1",`);
  });

  it("is refused where its filter is not understood", async () => {
    using db = listedClinic();
    await expect(file(db, "due", { kind: "hose" })).rejects.toMatchObject(
      refusing([{ code: "word-unknown" }]),
    );
  });

  it("is written down as taken", async () => {
    using db = listedClinic();
    await file(db, "due");
    const { reads } = await callerAs(db, people.lead).list.whoSawWhat({});
    expect(reads.rows).toMatchObject([{ subjectKind: "export", subjectId: "due" }]);
  });
});
