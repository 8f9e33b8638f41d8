import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { change, sentences } from "#tests/support/change-rows.ts";
import { dropRow } from "./change-row.ts";

describe("what is typed of a row of calls and cannot be", () => {
  it.each([
    [
      "a question that opens a red flag that the table has not",
      "calls.questions/fever",
      { redFlag: "fevers" },
      "redFlag",
      'The question "fever" opens the red flag "fevers", and the table would have no row of that name. Let the question name one that there is, or keep or add that row.',
    ],
    [
      "a red flag in its stead that the table has not",
      "calls.questions/fever",
      { "instead.2.redFlag": "shut" },
      "instead.2.redFlag",
      'The question "fever" opens the red flag "shut", and the table would have no row of that name. Let the question name one that there is, or keep or add that row.',
    ],
    [
      "two red flags in its stead for one sort of patient",
      "calls.questions/fever",
      { "instead.2.of": "immune suppression" },
      "instead.2.of",
      '"immune suppression" stands twice in this row. Leave one of them blank.',
    ],
    [
      "a red flag that no answer opens",
      "calls.questions/fever",
      { opensOn: "" },
      "opensOn",
      'No answer is named that opens "fever". Type yes or no, or leave blank what is opened.',
    ],
    [
      "a red flag in another's stead that no answer opens",
      "calls.questions/headache and sweating",
      { opensOn: "" },
      "opensOn",
      'No answer is named that opens "cord injury and blocked bladder drain". Type yes or no, or leave blank what is opened.',
    ],
    [
      "an entry that no answer leads to",
      "calls.questions/last volume",
      { opensOn: "" },
      "opensOn",
      'No answer is named that opens "output". Type yes or no, or leave blank what is opened.',
    ],
    [
      "an answer that opens nothing",
      "calls.questions/skin",
      { redFlag: "" },
      "opensOn",
      "The answer yes would open nothing. Leave this blank, or name a red flag or what is recorded then.",
    ],
    [
      "two questions of one name",
      "calls.questions/skin",
      { id: "leak" },
      "id",
      '"leak" has a row already, "Question: leak", and only one of the two would be found. Take it out of one of them.',
    ],
    [
      "two rows of one way after the attempts",
      "calls.rungs/alternate contact",
      { rung: "letter" },
      "rung",
      '"letter" has a row already, "Still not reached: letter", and only one of the two would be found. Take it out of one of them.',
    ],
    [
      "two rows of one part of the day",
      "calls.hours",
      { part: "evening", from: "20", to: "21", source: "CP" },
      "part",
      '"evening" has a row already, "Hours of calls: evening", and only one of the two would be found. Take it out of one of them.',
    ],
    [
      "hours that end before they begin",
      "calls.hours/evening",
      { to: "16" },
      "to",
      "This goes from 17 to 16. Turn the two round.",
    ],
    [
      "hours that are no time",
      "calls.hours/evening",
      { to: "17" },
      "to",
      "From 17 to 17 is no time at all. Type an end that comes later.",
    ],
    [
      "a part of the day that begins in the one before it",
      "calls.hours/afternoon",
      { from: "11" },
      "from",
      "The afternoon begins at 11, before the end of the morning, 12. Let the afternoon begin at 12 or later, or the morning end by 11.",
    ],
    [
      "a part of the day that ends in the next one",
      "calls.hours/morning",
      { to: "14" },
      "to",
      "The afternoon begins at 13, before the end of the morning, 14. Let the afternoon begin at 14 or later, or the morning end by 13.",
    ],
    [
      "an evening in the morning",
      "calls.hours/evening",
      { from: "7", to: "9" },
      "from",
      "The evening begins at 7, before the end of the afternoon, 17. Let the evening begin at 17 or later, or the afternoon end by 7.",
    ],
    [
      "a fourth attempt of the same kind",
      "calls.notReached",
      { attempts: "4" },
      "attempts",
      "4 attempts alike are too many: after 3 another way is tried. Make this 3 or less, and add a row of what follows.",
    ],
  ] as const)("%s", (_, address, texts, field, sentence) => {
    expect(sentences(address, texts)).toEqual([[field, sentence]]);
  });

  it("a red flag that a question opens is neither dropped nor called otherwise, and the question is named", () => {
    const said =
      'The question "collapsed" opens the red flag "collapse", and the table would have no row of that name. Let the question name one that there is, or keep or add that row.';
    const dropped = dropRow(exampleProtocol, "redFlags/collapse");
    expect(dropped.ok ? [] : dropped.refusals.map(refusalSentence)).toEqual([said]);
    expect(sentences("redFlags/collapse", { id: "passed out" })).toEqual([[undefined, said]]);
    const first = dropRow(exampleProtocol, "calls.questions/collapsed");
    if (!first.ok) throw new Error("nothing hangs on a question");
    expect(dropRow(first.protocol, "redFlags/collapse").ok).toBe(true);
  });

  it("a physician decides last: another way is added before, and the physician's row again behind it", () => {
    const sentence =
      'A physician decides last, and "letter" would come after. Drop the physician\'s row, and add it again behind the others.';
    const without = dropRow(exampleProtocol, "calls.rungs/letter");
    if (!without.ok) throw new Error("a letter can be dropped");
    const letter = { rung: "letter", afterWorkingDays: "1", says: "a letter", source: "CP" };
    expect(sentences("calls.rungs", letter, without.protocol)).toEqual([["rung", sentence]]);
    const noPhysician = dropRow(without.protocol, "calls.rungs/physician");
    if (!noPhysician.ok) throw new Error("a physician's row can be dropped");
    const added = change("calls.rungs", letter, noPhysician.protocol);
    if (!added.ok) throw new Error("a letter can be added");
    const physician = { rung: "physician", afterWorkingDays: "5", says: "decides", source: "CP" };
    expect(change("calls.rungs", physician, added.protocol)).toMatchObject({
      ok: true,
      address: "calls.rungs/physician",
    });
    expect(sentences("calls.rungs/alternate contact", { rung: "physician" }, added.protocol)).toEqual([
      [
        "rung",
        'A physician decides last, and "referrer and family doctor" would come after. Drop the physician\'s row, and add it again behind the others.',
      ],
    ]);
  });

  it("parts of the day that touch can be, and so can a row of an earlier part behind the others", () => {
    expect(change("calls.hours/afternoon", { from: "12" }).ok).toBe(true);
    const without = dropRow(exampleProtocol, "calls.hours/morning");
    if (!without.ok) throw new Error("a part of the day can be dropped");
    const morning = { part: "morning", from: "8", to: "12", source: "CP" };
    expect(change("calls.hours", morning, without.protocol).ok).toBe(true);
  });

  it("every question counts, however many speak of one kind; one that leads to nothing is a question too", () => {
    expect(change("calls.questions/bile or dizzy", { kinds: "nephrostomy, suprapubic catheter" }).ok).toBe(
      true,
    );
    expect(change("calls.questions/skin", { opensOn: "", redFlag: "" }).ok).toBe(true);
  });
});
