import { describe, expect, it } from "vitest";
import { exampleProtocol } from "#shared/protocol/example.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { change, sentences } from "#tests/support/change-rows.ts";
import { dropRow } from "./change-row.ts";
import { typedRow } from "./rows-of.ts";
import { senseOf } from "./sense.ts";

describe("what is typed of a row and cannot be", () => {
  it.each([
    [
      "a target after the latest",
      "intervals/nephrostomy",
      { target: "95" },
      "target",
      "The target, 95 days, lies after the latest, 90. Make the target 90 or less, or the latest 95 or more.",
    ],
    [
      "an earliest after the target",
      "intervals/nephrostomy",
      { earliest: "78" },
      "earliest",
      "The earliest, 78 days, lies after the target, 77. Make the earliest 77 or less, or the target 78 or more.",
    ],
    [
      "an earliest after the latest, without a target",
      "intervals/nephrostomy",
      { earliest: "91", target: "" },
      "earliest",
      "The earliest, 91 days, lies after the latest, 90. Make the earliest 90 or less, or the latest 91 or more.",
    ],
    [
      "a latest after the hard latest",
      "intervals/ureteral stent",
      { latest: "181" },
      "latest",
      "The latest, 181 days, lies after the hard latest, 180. Make the latest 180 or less, or the hard latest 181 or more.",
    ],
    [
      "a negative interval",
      "intervals/nephrostomy",
      { earliest: "-3" },
      "earliest",
      '"-3" is not between 0 and 3650. Check the number.',
    ],
    [
      "half a day",
      "intervals/nephrostomy",
      { earliest: "1.5" },
      "earliest",
      '"1.5" is not a whole number. Type one without decimals, like 14.',
    ],
    [
      "a word",
      "intervals/nephrostomy",
      { earliest: "soon" },
      "earliest",
      '"soon" is not a number. Type it in digits, like 14 or 0.5.',
    ],
    [
      "a decimal comma",
      "balloon",
      { lossOverMl: "0,5" },
      "lossOverMl",
      '"0,5" can be read two ways. Type a point, or no sign at all.',
    ],
    [
      "less than nothing",
      "escalation",
      { daysPastTarget: "-1" },
      "daysPastTarget",
      '"-1" is less than 0. Type 0 or more.',
    ],
    [
      "flush that comes back",
      "output",
      { flushDoesNotComeBackMl: "10" },
      "flushDoesNotComeBackMl",
      '"10" is more than 0. Type 0 or less.',
    ],
    [
      "no fever",
      "outputRows.fever",
      { fromC: "30" },
      "fromC",
      '"30" is not between 35 and 42. Check the number.',
    ],
    [
      "a size without a unit",
      "passage",
      { clearance: "0.001" },
      "clearance",
      '"0.001" needs a unit: F, in, mm, cm or G.',
    ],
    ["no source", "passage", { source: "" }, "source", "Type what the row says here."],
    [
      "anchors out from after to",
      "anchors/balloon gastrostomy",
      { from: "15" },
      "to",
      "This goes from 15 to 14. Turn the two round.",
    ],
    [
      "a second row of anchors of a kind",
      "anchors",
      { kind: "loop gastrostomy", holds: "suture", from: "7", to: "10", source: "CP" },
      "kind",
      '"loop gastrostomy" has a row already, "Anchors or sutures out: loop gastrostomy", and only one of the two would be found. Take it out of one of them.',
    ],
    ["anchors out without a last day", "anchors/loop gastrostomy", { to: "" }, "to", "Type a whole number."],
    ["from after to", "firstCall", { from: "4" }, "to", "This goes from 4 to 3. Turn the two round."],
    [
      "from after to, further in",
      "balloon",
      { "first.from": "30" },
      "first.to",
      "This goes from 30 to 28. Turn the two round.",
    ],
    [
      "INR the wrong way round",
      "bleeding",
      { "rows.2.inrAtMost.to": "1.2" },
      "rows.2.inrAtMost.to",
      "This goes from 1.5 to 1.2. Turn the two round.",
    ],
    [
      "more days than there are",
      "outputRows.plateau",
      { days: "8" },
      "days",
      "8 of the last 7 days cannot be. Make this 7 or less, or the days behind it more.",
    ],
    [
      "mature while immature",
      "intervals/nephrostomy",
      { matureFrom: "10" },
      "matureFrom",
      "A tract that is immature under 14 days is not mature from 10. Make this 14 or more, or leave it blank.",
    ],
    [
      "slow to heal and sooner",
      "intervals/balloon gastrostomy",
      { immatureIfSlowUnder: "20" },
      "immatureIfSlowUnder",
      "Of somebody slow to heal the tract is immature longer than the usual 28 days, not under 20. Make this 28 or more, or leave it blank.",
    ],
    [
      "a way twice",
      "intervals/cholecystostomy",
      { "byRoute.2.route": "transhepatic" },
      "byRoute.2.route",
      '"transhepatic" stands twice in this row. Leave one of them blank.',
    ],
    [
      "a class twice",
      "bleeding",
      { "rows.2.class": "low" },
      "rows.2.class",
      '"low" stands twice in this row. Leave one of them blank.',
    ],
    [
      "a kind in two rows",
      "outputRows.dry/2",
      { kinds: "nephrostomy" },
      "kinds",
      '"nephrostomy" has a row already, "Dry: nephrostomy, nephroureteral catheter, suprapubic catheter", and only one of the two would be found. Take it out of one of them.',
    ],
    [
      "a kind in two rows of one act",
      "planning.room/2",
      { kinds: "nephrostomy, suprapubic catheter" },
      "kinds",
      '"nephrostomy, exchange" has a row already, "Room: exchange of nephrostomy, nephroureteral catheter, conduit catheter", and only one of the two would be found. Take it out of one of them.',
    ],
    [
      "a second tube that takes longer than one alone",
      "planning.room/1",
      { further: "31" },
      "further",
      "A further tube of the visit would take 31 minutes, longer than one alone, 30. Make this 30 or less, or leave it blank.",
    ],
    [
      "no act",
      "planning.room/1",
      { acts: "" },
      "acts",
      "Type one or more of the choices, with commas between.",
    ],
    [
      "less than the day itself",
      "visits.prerequisites/1",
      { workingDaysBefore: "-1" },
      "workingDaysBefore",
      '"-1" is not between 0 and 365. Check the number.',
    ],
    [
      "a trouble that raises two flags",
      "redFlags/collapse",
      { "raisedBy.1.trouble": "bled", "raisedBy.1.grave": "yes" },
      "raisedBy.1.trouble",
      '"bled, grave" has a row already, "Red flag: heavy bleeding", and only one of the two would be found. Take it out of one of them.',
    ],
    [
      "a name that another row has",
      "redFlags/collapse",
      { id: "fever" },
      "id",
      '"fever" has a row already, "Red flag: fever", and only one of the two would be found. Take it out of one of them.',
    ],
    [
      "a second flush of a kind",
      "flush",
      { kind: "nephrostomy", order: "none", source: "CP" },
      "kind",
      '"nephrostomy" has a row already, "Flush as ordered: nephrostomy", and only one of the two would be found. Take it out of one of them.',
    ],
    [
      "two rows of one kind, factor and turn",
      "intervals/nephrostomy, pregnancy",
      { factor: "stone former" },
      "kind",
      'The row "nephrostomy, stone former" is for this kind, this factor and this catheter already. Change that one, or choose another kind, factor or catheter here.',
    ],
  ] as const)("%s", (_, address, texts, field, sentence) => {
    const said = sentences(address, texts);
    expect(said).toContainEqual([field, sentence]);
    expect(said).toHaveLength(1);
  });

  it("a further tube that takes as long as the first, and two rows of one thing before a visit, can be", () => {
    expect(change("planning.room/1", { further: "30" }).ok).toBe(true);
    expect(change("planning.room/2", { kinds: "nephrostomy", acts: "removal" }).ok).toBe(false);
    const labs = { thing: "labs", acts: "exchange", workingDaysBefore: "5", says: "again", source: "CP" };
    expect(change("visits.prerequisites", labs)).toMatchObject({
      ok: true,
      address: "visits.prerequisites/14",
    });
    const same = typedRow(exampleProtocol, "visits.prerequisites/3");
    expect(change("visits.prerequisites", same).ok).toBe(true);
  });

  it("a factor without its kind's plain row, typed in a new row or left over by what is dropped", () => {
    const row = {
      kind: "jejunostomy",
      id: "jejunostomy, pregnancy",
      factor: "pregnancy",
      turn: "any",
      asks: "exchange",
      source: "CP",
    };
    expect(change("intervals", row).ok).toBe(true);
    expect(dropRow(exampleProtocol, "intervals/nephrostomy")).toMatchObject({ ok: false });
    const refused = dropRow(exampleProtocol, "intervals/nephrostomy");
    if (refused.ok) return;
    expect(refused.refusals.map(refusalSentence)).toContain(
      'The row "nephrostomy, pregnancy" is for a nephrostomy with pregnancy, and no row is for one without. Keep or add the nephrostomy\'s own row, or choose no factor here.',
    );
    expect(refused.refusals.every(({ field }) => field === undefined)).toBe(true);
    const plainDropped = dropRow(exampleProtocol, "intervals/jejunostomy");
    if (!plainDropped.ok) throw new Error("no row hangs on it");
    expect(sentences("intervals", row, plainDropped.protocol)).toEqual([
      ["factor", expect.stringContaining("no row is for one without")],
    ]);
  });

  it("every place of a row at once, each by itself", () => {
    expect(
      sentences("intervals/nephrostomy", { earliest: "-1", target: "x", source: "" }).map(([field]) => field),
    ).toEqual(["earliest", "target", "source"]);
  });

  it("nothing of the example", () => expect(senseOf(exampleProtocol)).toEqual([]));
});
