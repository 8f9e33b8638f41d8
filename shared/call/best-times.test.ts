import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { bestSpans, readBestTimes } from "./best-times.ts";

/** How people write when they are best reached: common practice, no source. Parts of the day are the example's rows: morning 9-12, afternoon 13-17, evening 17-20. */
const hours = exampleProtocol.calls?.hours ?? [];
const clock = (minute: number): string =>
  `${Math.floor(minute / 60)}:${String(minute % 60).padStart(2, "0")}`;
const read = (text: string): string | null =>
  readBestTimes(text, hours)
    ?.map(({ from, to }) => `${clock(from)}-${clock(to)}`)
    .join(" ") ?? null;

describe("best times", () => {
  it.each([
    ["after 5 pm", "17:00-24:00"],
    ["After 17:00", "17:00-24:00"],
    ["from 5.30pm", "17:30-24:00"],
    ["not before noon", "12:00-24:00"],
    ["before noon", "0:00-12:00"],
    ["until 10", "0:00-10:00"],
    ["mornings", "9:00-12:00"],
    ["in the evening only", "17:00-20:00"],
    ["(mornings)", "9:00-12:00"],
    ["9-11", "9:00-11:00"],
    ["9 to 11:30", "9:00-11:30"],
    ["4-6 pm", "16:00-18:00"],
    ["11 am to 1 pm", "11:00-13:00"],
    ["between 9 and 11", "9:00-11:00"],
    ["mornings or after 6 pm", "9:00-12:00 18:00-24:00"],
    ["12-13, 18:00-20:00", "12:00-13:00 18:00-20:00"],
  ])("%s is %s", (text, spans) => expect(read(text)).toBe(spans));

  it.each([
    "",
    "after 5",
    "4-6",
    "when she is back",
    "not on Fridays",
    "Tue after 5 pm",
    "5 pm",
    "18-9",
    "mornings, ask the son",
  ])("%s is not understood, or may be read two ways", (text) => expect(read(text)).toBeNull());

  it("parts of the day are read only where a row says when they are", () => {
    expect(readBestTimes("mornings", [])).toBeNull();
  });

  it("of several numbers are all that is understood", () => {
    expect(bestSpans(["after 6 pm", "whenever", "mornings"], hours)).toEqual([
      { from: 540, to: 720 },
      { from: 1080, to: 1440 },
    ]);
    expect(bestSpans(["whenever"], hours)).toEqual([]);
    expect(bestSpans([], hours)).toEqual([]);
  });
});
