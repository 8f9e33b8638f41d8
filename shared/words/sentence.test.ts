import { expect, it } from "vitest";
import { sentence } from "./sentence.ts";

it.each([
  ["hard to flush last time", "Checked: loop formed. hard to flush last time."],
  ["hard to flush last time.", "Checked: loop formed. hard to flush last time."],
  ["hard to flush?", "Checked: loop formed. hard to flush?"],
  ['said "it pulls!"', 'Checked: loop formed. said "it pulls!"'],
  ["(left side)", "Checked: loop formed. (left side)."],
  ["~10 cm", "Checked: loop formed. ~10 cm."],
  [null, "Checked: loop formed."],
])("what was typed, %j, ends before the next sentence begins", (note, expected) => {
  expect(sentence("Checked", ["loop formed"], note)).toBe(expected);
});
