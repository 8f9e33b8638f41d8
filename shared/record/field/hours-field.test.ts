import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readHours } from "#shared/record/field/hours-field.ts";
import { MOST_SPANS, minutesOf, type Room } from "#shared/visit/room.ts";
import { roomSchema } from "#shared/visit/room-schema.ts";
import { hoursLines, hoursTyped, hoursWords } from "#shared/words/hours.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { room } from "#tests/factories/visit.ts";

/** The echo of what was typed, or what is to mend. */
function said(text: string): string {
  const read = readHours(text);
  return read.ok ? hoursWords(read.value) : refusalSentence(read.refusal);
}

describe("hours by weekday", () => {
  it.each([
    [
      "mon-thu 8-16:30, fri 8-12, 13-15",
      "Monday to Thursday 08:00 to 16:30; Friday 08:00 to 12:00, 13:00 to 15:00",
    ],
    ["mon, wed, thu 8:30-13", "Monday, Wednesday, Thursday 08:30 to 13:00"],
    ["Mon to Fri from 8 am to 4 pm", "Monday to Friday 08:00 to 16:00"],
    ["tue and fri 13.00 – 16.30", "Tuesday, Friday 13:00 to 16:30"],
    ["mon: 0800-1200 tue: 830-noon", "Monday 08:00 to 12:00; Tuesday 08:30 to 12:00"],
    ["every day 0-24", "Monday to Sunday 00:00 to 24:00"],
    ["mon 17-24, tue 0-8", "Monday 17:00 to 24:00; Tuesday 00:00 to 08:00"],
    ["mon 13-15, 8-12", "Monday 08:00 to 12:00, 13:00 to 15:00"],
    ["mon 8-12, 12-16", "Monday 08:00 to 16:00"],
    ["fri 8-12; mon-fri 13-15", "Monday to Thursday 13:00 to 15:00; Friday 08:00 to 12:00, 13:00 to 15:00"],
    ["mon 12 am - 12 pm", "Monday 00:00 to 12:00"],
  ])("%s", (typed, echo) => {
    expect(said(typed)).toBe(echo);
  });

  it("a room open from 17:00 to 08:00 is told to be written as two", () => {
    expect(said("mon-fri 17:00-08:00")).toBe(
      "17:00 to 08:00 ends before it begins: a room that works over midnight is written as two, from 17:00 to 24:00 and from 00:00 to 08:00 on the days after.",
    );
  });

  it.each([
    ["", "Type when the room is staffed, like mon-fri 8-16."],
    [" , ", "Type when the room is staffed, like mon-fri 8-16."],
    ["8-16", "No day of the week stands before 8-16. Type the days first, like mon-fri 8-16."],
    [
      "mon-fri",
      "No hours stand after Monday to Friday. Type them like mon-fri 8-16, or leave those days out.",
    ],
    ["mon 8-16, tue", "No hours stand after Tuesday. Type them like mon-fri 8-16, or leave those days out."],
    ["mon 8-8", "08:00 to 08:00 is no time at all. Type an end that comes later; the whole day is 0-24."],
    [
      "mon 8-12, 11-15",
      "On Monday one time ends at 12:00 and the next begins at 11:00, before it. Join them, or part them.",
    ],
    [
      "mon-fri 8-16, wed 12-18",
      "On Wednesday one time ends at 16:00 and the next begins at 12:00, before it. Join them, or part them.",
    ],
    ["mon 0-1, 2-3, 4-5, 6-7, 8-9", "Monday has more than 4 times of its own. Join some of them."],
    [
      "fryday 8-16",
      '"fryday" is not understood as days of the week. Type them like mon-fri, or mon wed fri.',
    ],
  ])("%j is asked again", (typed, sentence) => {
    expect(said(typed)).toBe(sentence);
  });

  it.each(["8", "8-25", "8-12:60", "8-24:30", "13 pm-14", "8--12", "8-12-14", "0 am-3"])(
    "mon %s is not understood as hours",
    (typed) => {
      expect(said(`mon ${typed}`)).toMatch(/^"[^"]+" is not understood as hours\./);
    },
  );
});

const spanSets = fc
  .uniqueArray(fc.integer({ min: 0, max: 288 }), { minLength: 2, maxLength: 2 * MOST_SPANS })
  .map((marks) => {
    const inOrder = marks.toSorted((a, b) => a - b).map((mark) => mark * 5);
    return Array.from({ length: Math.floor(inOrder.length / 2) }, (_, at) => ({
      from: inOrder[2 * at] ?? 0,
      to: inOrder[2 * at + 1] ?? 0,
    }));
  });

const anyHours: fc.Arbitrary<Room["hours"]> = fc
  .tuple(
    fc.subarray([1, 2, 3, 4, 5, 6, 7] as const, { minLength: 1 }),
    fc.array(spanSets, { minLength: 7, maxLength: 7 }),
    fc.boolean(),
  )
  .map(([weekdays, sets, alike]) =>
    weekdays.flatMap((weekday) =>
      (sets[alike ? 0 : weekday - 1] ?? []).map((span) => ({ weekday, ...span })),
    ),
  );

describe("law: what is printed of hours is read back as them", () => {
  it.each([
    ["in words", hoursWords],
    ["as typed", hoursTyped],
  ])("%s, in any order, and stored rooms may have them", (_, print) => {
    fc.assert(
      fc.property(anyHours, (hours) => {
        const read = readHours(print(hours.toReversed()));
        expect(read).toEqual({ ok: true, value: hours });
        expect(roomSchema.safeParse(room({ hours })).success).toBe(true);
      }),
    );
  });

  it("a line of words stands for each group of days that are alike, and no minute is lost", () => {
    fc.assert(
      fc.property(anyHours, (hours) => {
        const lines = hoursLines(hours).map(readHours);
        const minutes = lines.map((read) => (read.ok ? minutesOf(read.value) : Number.NaN));
        expect(minutes.reduce((sum, one) => sum + one, 0)).toBe(minutesOf(hours));
      }),
    );
  });
});
