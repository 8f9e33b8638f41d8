import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Database } from "#db/sqlite.ts";
import { LIST_PAGE } from "#server/lists/work-list.ts";
import type { day } from "#shared/day/day.ts";
import type { FilterTexts } from "#shared/record/list-filter.ts";
import { type WorkList, workLists } from "#shared/step/work-list.ts";
import { testDatabase } from "#tests/support/database.ts";
import { placed, takenOver } from "#tests/support/factories.ts";
import {
  ago,
  booked,
  listedClinic,
  nephrostomy,
  noted,
  nurseLists,
  patientsIn,
  record,
  TODAY,
} from "#tests/support/listed-clinic.ts";
import { here } from "#tests/support/visit-factories.ts";

beforeEach(() => {
  vi.useFakeTimers({ toFake: ["Date"], now: new Date(`${TODAY}T12:00:00Z`) });
});
afterEach(() => {
  vi.useRealTimers();
});

/** Every line of a list, page by page. */
async function all(db: Database, list: WorkList, filter: FilterTexts = {}): Promise<readonly string[]> {
  const found: string[] = [];
  let place: { dueOn: ReturnType<typeof day>; id: string } | undefined;
  do {
    const page = await nurseLists(db).work({ list, filter, place });
    found.push(...patientsIn(page.placed), ...patientsIn(page.lines));
    place = page.next ?? undefined;
  } while (place !== undefined);
  return found;
}

const PREPARED_FOR = ["booked", "confirmed", "proposed"];

describe("each list", () => {
  const holds: readonly (readonly [WorkList, readonly string[]])[] = [
    ["due", ["booked", "target today", "window opens today"]],
    ["overdue", ["latest today", "target yesterday"]],
    ["past-latest", ["latest yesterday"]],
    ["undated", ["undated"]],
    ["unconfirmed", ["booked", "elsewhere", "proposed"]],
    ["did-not-attend", ["missed"]],
    ["handed-over", ["given away"]],
    ["elsewhere", ["told"]],
    ["prerequisites", PREPARED_FOR],
  ];

  it("is one of these", () => {
    expect(holds.map(([list]) => list)).toEqual([...workLists]);
  });

  it.each(holds)("%s holds %j, and its count says as many", async (list, expected) => {
    using db = listedClinic();
    expect((await all(db, list)).toSorted()).toEqual(expected);
    const { lists } = await nurseLists(db).all({});
    expect(lists.find((one) => one.list === list)).toEqual({ list, count: expected.length });
    expect((await nurseLists(db).work({ list })).total).toBe(expected.length);
  });

  it.each<FilterTexts>([
    { kind: "pcn" },
    { side: "right" },
    { owner: "nurse" },
    { service: "unknown" },
    { visit: "with" },
    { visit: "without" },
  ])("holds under %j what its count says, and no more than without it", async (filter) => {
    using db = listedClinic();
    const { lists } = await nurseLists(db).all({ filter });
    for (const { list, count } of lists) {
      const found = await all(db, list, filter);
      expect([list, count]).toEqual([list, found.length]);
      expect(await all(db, list)).toEqual(expect.arrayContaining([...found]));
    }
  });

  it("shares no step of the clock with another: due, overdue, past latest, undated, or not yet", async () => {
    using db = testDatabase();
    for (let days = 0; days < 130; days += 1) record(db, `day ${days}`, [nephrostomy(`day ${days}`, days)]);
    record(db, "undated", [takenOver({ tube: "undated", on: "?", recordedOn: TODAY })]);
    const lists = await Promise.all(
      (["due", "overdue", "past-latest", "undated"] as const).map((list) => all(db, list)),
    );
    const each = lists.flat();
    expect(new Set(each).size).toBe(each.length);
    const early = Array.from({ length: 63 }, (_, days) => `day ${days}`);
    // A window may open earlier for a closed day; what is in no list has its window still before it.
    const { lines } = await nurseLists(db).exchanges({ filter: {} });
    expect(lines.length).toBeGreaterThan(0);
    expect(each.filter((name) => early.includes(name)).length).toBeLessThan(3);
    expect(each.length).toBeGreaterThanOrEqual(131 - early.length);
  });

  it("under a filter that is refused lists and counts nothing", async () => {
    using db = listedClinic();
    const filter = { kind: "hose" };
    expect(await nurseLists(db).work({ list: "due", filter })).toMatchObject({
      lines: [],
      placed: [],
      total: 0,
    });
    const { lists, asked } = await nurseLists(db).all({ filter });
    expect(lists.map(({ count }) => count)).toEqual(workLists.map(() => null));
    expect(asked.refusals).toMatchObject([{ field: "kind" }]);
  });

  it("goes on from page to page, leaves none out and shows none twice", async () => {
    using db = testDatabase();
    const tubes = Array.from({ length: LIST_PAGE + 7 }, (_, index) => `tube ${index}`);
    for (const [index, name] of tubes.entries()) record(db, name, [nephrostomy(name, 95 + (index % 3))]);
    const first = await nurseLists(db).work({ list: "past-latest" });
    expect(first.lines).toHaveLength(LIST_PAGE);
    expect([...(await all(db, "past-latest"))].toSorted()).toEqual(tubes.toSorted());
  });
});

describe("the visit of a line", () => {
  it("is the next of its tube, here, held or elsewhere; none where none is to come", async () => {
    using db = listedClinic();
    const { lines } = await nurseLists(db).exchanges({});
    const visitOf = (name: string) => lines.find(({ patient }) => patient.id === name)?.visit;
    expect(visitOf("booked")).toMatchObject({ state: "booked", on: "2026-11-11", from: 570, where: null });
    expect(visitOf("proposed")).toMatchObject({ state: "proposed" });
    expect(visitOf("elsewhere")).toMatchObject({ state: "booked", from: 600, where: "Far Dale General" });
    expect(visitOf("missed")).toBeNull();
    expect(visitOf("in time")).toBeNull();
  });

  it("names the tubes of a visit for several, and is the missed one where nobody came", async () => {
    using db = testDatabase();
    record(db, "both", [
      nephrostomy("both", 30),
      placed({ tube: "other", number: 2, side: "right", on: ago(30) }),
      booked("both", {
        tubes: [
          { tubeId: "both", act: "exchange" },
          { tubeId: "other", act: "exchange" },
        ],
        place: here("10:00", 50),
      }),
    ]);
    record(db, "missed", [
      nephrostomy("missed", 30),
      booked("missed", { visitOn: ago(1) }),
      noted("missed", { state: "did not attend" }),
    ]);
    const [visit] = (await nurseLists(db).work({ list: "unconfirmed" })).lines;
    expect(visit?.tube).toBeNull();
    expect(visit?.visit?.tubes.map(({ name }) => name)).toEqual([
      expect.stringContaining("Left"),
      expect.stringContaining("Right"),
    ]);
    const [missed] = (await nurseLists(db).work({ list: "did-not-attend" })).lines;
    expect(missed?.visit).toMatchObject({ state: "did not attend", on: ago(1) });
  });

  it("with and without a visit part the tubes, and hide none", async () => {
    using db = listedClinic();
    const of = async (filter: FilterTexts) => patientsIn((await nurseLists(db).exchanges({ filter })).lines);
    const [every, withVisit, without] = [
      await of({}),
      await of({ visit: "with" }),
      await of({ visit: "without" }),
    ];
    expect(withVisit.toSorted()).toEqual(["booked", "confirmed", "elsewhere", "proposed"]);
    expect([...withVisit, ...without].toSorted()).toEqual(every.toSorted());
  });

  it("a step of the whole record stands under with, under without, or under both", async () => {
    using db = testDatabase();
    record(db, "half booked", [
      nephrostomy("half booked", 30),
      placed({ tube: "other", number: 2, side: "right", on: ago(30) }),
      nephrostomy("third", 30),
      booked("half booked", {
        tubes: [
          { tubeId: "half booked", act: "exchange" },
          { tubeId: "other", act: "exchange" },
        ],
      }),
    ]);
    const found = async (visit: string) =>
      patientsIn((await nurseLists(db).work({ list: "unconfirmed", filter: { visit } })).lines);
    expect([await found("with"), await found("without")]).toEqual([["half booked"], ["half booked"]]);
  });
});
