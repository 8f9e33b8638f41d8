import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import type { SheetLine } from "#shared/sheet/sheet.ts";
import type { Visit } from "#shared/visit/visit.ts";
import { minute } from "#tests/factories/visit.ts";
import { type BookingAnswers, columnsOf, noAnswers } from "./columns.ts";
import { type BookingStanding, standBookings } from "./stand-bookings.ts";
import type { HereBooked, HerePatient, HereTube } from "./whom.ts";

/** Fri 6 Nov 2026, 12:00. */
const TODAY = day("2026-11-06");

const left: HereTube = {
  id: "l",
  number: 1,
  name: "Left nephrostomy, 8 F",
  kind: "nephrostomy",
  side: "left",
};
const right: HereTube = { ...left, id: "r", number: 2, name: "Right nephrostomy, 8 F", side: "right" };
const unsided: HereTube = { ...left, id: "u", number: 3, name: "Nephrostomy, side unknown", side: null };
const drain: HereTube = {
  id: "d",
  number: 1,
  name: "Abscess drain, 10 F",
  kind: "abscess drain",
  side: null,
};

const patient = (id: string, said: Partial<HerePatient> = {}): HerePatient => ({
  id,
  familyName: "Brackenfold",
  givenName: "Ottoline",
  birthOn: day("1951-04-03"),
  number: "004711",
  tubes: [left],
  visits: [],
  ...said,
});

const visit = (said: Partial<Visit> = {}): Visit => ({
  id: "visit-1",
  tubes: [{ tubeId: "l", act: "exchange" }],
  answered: [],
  state: "booked",
  on: day("2026-11-11"),
  place: { kind: "elsewhere", where: "Far Dale General", from: minute("09:30") },
  urgent: false,
  needs: [],
  notOn: [],
  note: null,
  revision: 0,
  moved: 0,
  by: null,
  reason: null,
  prepared: [],
  bookedOn: day("2026-11-01"),
  eventId: "visit-1",
  recordedOn: day("2026-11-01"),
  ...said,
});

const hereWith = (...patients: readonly HerePatient[]): HereBooked => ({
  byNumber: (number) => patients.filter((one) => one.number === number),
  bornOn: (on) => patients.filter(({ birthOn }) => birthOn === on),
});

const headings = ["Number", "Name", "Born", "Date", "Time", "Where", "What"];

/** Number, name, birth date, day, time, place, what; from row 2 on. */
type Cells = readonly [string, string?, string?, string?, string?, string?, string?];
const BOOKED: Cells = ["004711", "", "", "2026-11-11", "9:30", "Far Dale General", "exchange"];

const line = (cells: Cells, at = 0): SheetLine => ({
  row: at + 2,
  cells: headings.map((_, index) => cells[index] ?? BOOKED[index] ?? ""),
});

function stand(
  here: HereBooked,
  rows: readonly Cells[],
  answers: Partial<BookingAnswers> = {},
): readonly BookingStanding[] {
  const all = { ...noAnswers, ...answers };
  return standBookings(rows.map(line), {
    here,
    answers: all,
    reading: {
      columns: columnsOf(headings, null),
      dateOrder: "day first",
      answers: all,
      today: TODAY,
      at: minute("12:00"),
    },
  });
}

const standOf = (here: HereBooked, cells: Cells, answers?: Partial<BookingAnswers>): BookingStanding =>
  stand(here, [cells], answers)[0]!;

const refused = (code: string, args?: object) => ({
  stands: "set aside",
  reasons: [{ refusal: { code, ...(args && { args }) } }],
});

describe("whose a row is", () => {
  const two = hereWith(patient("a"), patient("b", { number: "9", familyName: "O'Brien", birthOn: null }));
  const whom = (cells: Cells) => {
    const standing = standOf(two, cells);
    return standing.stands === "books" ? standing.booking.patient.id : standing;
  };

  it("goes by the record number, or by family name and birth date in whatever order the name stands", () => {
    expect(whom(["004711"])).toBe("a");
    expect(whom(["9", "OBRIEN"])).toBe("b");
    for (const name of [
      "Brackenfold",
      "Brackenfold, Ottoline",
      "Ottoline Brackenfold",
      "BRACKENFOLD Ottoline",
    ])
      expect(whom(["", name, "3/4/1951"])).toBe("a");
    expect(whom(["unheard of", "Brackenfold", "3 apr 1951"])).toBe("a");
  });

  it.each<readonly [Cells, string, object | undefined]>([
    [["777"], "booking-number-unknown", { number: "777" }],
    [["777", "Brackenfold", "4/4/1951"], "booking-number-unknown", { number: "777" }],
    [["", "Otterby", "3/4/1951"], "booking-person-unknown", { name: "Otterby", born: "Tue 3 Apr 1951" }],
    [["", "Ottoline", "3/4/1951"], "booking-person-unknown", { name: "Ottoline", born: "Tue 3 Apr 1951" }],
    [["", "Brackenfold"], "booking-of-nobody", undefined],
    [
      ["004711", "Otterby"],
      "booking-number-of-another",
      { number: "004711", here: "Brackenfold, Ottoline, born 3 Apr 1951" },
    ],
    [
      ["004711", "", "4/4/1951"],
      "booking-number-of-another",
      { number: "004711", here: "Brackenfold, Ottoline, born 3 Apr 1951" },
    ],
  ])("%j is set aside: %s", (cells, code, args) => {
    expect(whom(cells)).toMatchObject(refused(code, args));
  });

  it("two of one number are told apart by the rest, or not at all", () => {
    const here = hereWith(patient("a"), patient("b", { birthOn: day("1960-01-01") }));
    expect(standOf(here, ["004711"])).toMatchObject(refused("booking-several-patients"));
    expect(standOf(here, ["004711", "", "1/1/1960"])).toMatchObject({ booking: { patient: { id: "b" } } });
  });
});

describe("which tube a row means", () => {
  const both = hereWith(patient("a", { tubes: [left, right] }));
  const meant = (here: HereBooked, what: string, answers?: Partial<BookingAnswers>) => {
    const standing = standOf(here, [...BOOKED.slice(0, 6), what] as unknown as Cells, answers);
    if (standing.stands === "books")
      return [standing.booking.tubes.map(({ id }) => id).join(), standing.booking.act];
    return standing.stands === "asks" ? standing.options.map(({ value }) => value) : standing;
  };

  it("is the only one that is in, whatever is left unsaid", () => {
    expect(meant(hereWith(patient("a")), "exchange")).toEqual(["l", "exchange"]);
    expect(meant(hereWith(patient("a", { tubes: [drain] })), "removal")).toEqual(["d", "removal"]);
  });

  it("is the one that the words name, both where both are said", () => {
    expect(meant(both, "PCN exchange right")).toEqual(["r", "exchange"]);
    expect(meant(both, "left tube change")).toEqual(["l", "exchange"]);
    expect(meant(both, "bilateral nephrostomy exchange")).toEqual(["l,r", "exchange"]);
    expect(
      meant(hereWith(patient("a", { tubes: [left, { ...drain, number: 2 }] })), "abscess drain removal"),
    ).toEqual(["d", "removal"]);
  });

  it("is asked where several can be meant, where the words contradict the record, and where a side is not known", () => {
    expect(meant(both, "nephrostomy exchange")).toEqual(["1:exchange", "2:exchange", "1+2:exchange"]);
    expect(meant(hereWith(patient("a")), "right nephrostomy exchange")).toEqual(["1:exchange"]);
    expect(meant(hereWith(patient("a", { tubes: [unsided] })), "left nephrostomy exchange")).toEqual([
      "3:exchange",
    ]);
    expect(meant(hereWith(patient("a", { tubes: [left, unsided] })), "left exchange")).toEqual([
      "1:exchange",
      "3:exchange",
      "1+3:exchange",
    ]);
  });

  it("the act is the row's, else what was answered for the list, else asked", () => {
    const one = hereWith(patient("a"));
    expect(meant(one, "IR")).toEqual(["1:exchange", "1:check", "1:removal"]);
    expect(meant(one, "IR", { act: "check" })).toEqual(["l", "check"]);
    expect(meant(one, "exchange", { act: "check" })).toEqual(["l", "exchange"]);
  });

  it("a choice of the row stands; one that names no tube of the patient is asked again", () => {
    expect(meant(both, "exchange", { choices: { 2: "1+2:check" } })).toEqual(["l,r", "check"]);
    expect(meant(both, "exchange", { choices: { 2: "7:check" } })).toHaveLength(3);
  });

  it("a patient without a tube in care is set aside", () => {
    expect(standOf(hereWith(patient("a", { tubes: [] })), BOOKED)).toMatchObject(
      refused("booking-without-tube"),
    );
  });
});

describe("a day and a time", () => {
  const here = hereWith(patient("a"));

  it.each<readonly [Cells, string, number | null]>([
    [["004711", "", "", "11/11/2026", "9:30"], "2026-11-11", 570],
    [["004711", "", "", "11/11/2026 09:30:00", ""], "2026-11-11", 570],
    [["004711", "", "", "2026-11-11T14:05", ""], "2026-11-11", 845],
    [["004711", "", "", "11 Nov 2026", "2 pm"], "2026-11-11", 840],
    [["004711", "", "", "11/11/2026", ""], "2026-11-11", null],
    [["004711", "", "", "6/11/2026", "12:00"], "2026-11-06", 720],
  ])("%j", (cells, on, from) => {
    expect(standOf(here, cells)).toMatchObject({ stands: "books", booking: { on, from } });
  });

  it.each<readonly [Cells, string, string]>([
    [["004711", "", "", "5/11/2026", ""], "Date", "slot-past"],
    [["004711", "", "", "6/11/2026", "11:59"], "Date", "slot-past"],
    [["004711", "", "", "", ""], "Date", "text-missing"],
    [["004711", "", "", "31/11/2026", ""], "Date", "day-does-not-exist"],
    [["004711", "", "", "11/11/2026", "noonish"], "Time", "clock-not-understood"],
    [["004711", "", "", "46337", ""], "Date", "day-number"],
  ])("%j is set aside at %s: %s", (cells, label, code) => {
    expect(standOf(here, cells)).toMatchObject({
      stands: "set aside",
      reasons: [{ label, refusal: { code } }],
    });
  });

  it("where it is is the row's, else what was answered for the list", () => {
    const where = (cell: string) =>
      standOf(here, ["004711", "", "", "11/11/2026", "", cell], { where: "the ward" });
    expect(where("Room 7")).toMatchObject({ booking: { where: "Room 7" } });
    expect(where("")).toMatchObject({ booking: { where: "the ward" } });
  });
});

describe("beside what is booked already", () => {
  const booked = (...visits: readonly Visit[]) => hereWith(patient("a", { visits }));

  it("the same day and place is known; a list without a time says no other", () => {
    expect(standOf(booked(visit()), BOOKED)).toMatchObject({ stands: "known" });
    expect(standOf(booked(visit()), ["004711", "", "", "11/11/2026", "", "far dale general"])).toMatchObject({
      stands: "known",
    });
  });

  it.each<readonly [string, Cells]>([
    ["another day", ["004711", "", "", "12/11/2026"]],
    ["another time", ["004711", "", "", "11/11/2026", "10:00"]],
    ["another place", ["004711", "", "", "11/11/2026", "9:30", "Mere Cottage"]],
  ])("%s moves it", (_, cells) => {
    expect(standOf(booked(visit()), cells)).toMatchObject({ stands: "moves", visit: { id: "visit-1" } });
  });

  it("a visit here is not the hospital's to move, nor one for other tubes besides", () => {
    const place = { kind: "here", roomId: "room-1", from: minute("9:30"), minutes: 30 } as const;
    const args = { tube: left.name, day: "Wed 11 Nov 2026" };
    expect(standOf(booked(visit({ place })), BOOKED)).toMatchObject(refused("visit-tube-booked", args));
    const tubes = [
      { tubeId: "l", act: "exchange" },
      { tubeId: "r", act: "exchange" },
    ] as const;
    expect(standOf(booked(visit({ tubes })), BOOKED)).toMatchObject(refused("visit-tube-booked", args));
  });

  it.each(["cancelled", "done", "did not attend"] as const)("one that is %s stands in no way", (state) => {
    expect(standOf(booked(visit({ state })), BOOKED)).toMatchObject({ stands: "books" });
  });
});

describe("a tube twice in one list", () => {
  const here = hereWith(patient("a", { tubes: [left, right] }));
  const left1: Cells = ["004711", "", "", "11/11/2026", "9:30", "Far Dale General", "left pcn exchange"];

  it("said the same way counts once", () => {
    const rows = stand(here, [left1, left1, left1]);
    expect(rows.map(({ stands }) => stands)).toEqual(["books", "said above", "said above"]);
    expect(rows[2]).toMatchObject({ above: 2 });
  });

  it("said otherwise, neither is taken: nobody here can tell which holds", () => {
    const other: Cells = ["004711", "", "", "12/11/2026", "9:30", "Far Dale General", "left pcn exchange"];
    const rows = stand(here, [left1, other]);
    expect(rows[0]).toMatchObject(refused("booking-twice", { rows: "3" }));
    expect(rows[1]).toMatchObject(refused("booking-twice", { rows: "2" }));
  });

  it("alone and with another tube is said otherwise; two tubes in two rows are two bookings", () => {
    const both: Cells = [
      "004711",
      "",
      "",
      "11/11/2026",
      "9:30",
      "Far Dale General",
      "bilateral pcn exchange",
    ];
    expect(stand(here, [left1, both]).map(({ stands }) => stands)).toEqual(["set aside", "set aside"]);
    const right1: Cells = ["004711", "", "", "11/11/2026", "10:00", "Far Dale General", "right pcn exchange"];
    expect(stand(here, [left1, right1]).map(({ stands }) => stands)).toEqual(["books", "books"]);
  });
});
