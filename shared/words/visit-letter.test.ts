import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { fold } from "#shared/tube/fold.ts";
import { prerequisiteThings } from "#shared/visit/prerequisite-things.ts";
import { visitActs } from "#shared/visit/visit-acts.ts";
import { minute } from "#tests/factories/visit.ts";
import { placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { here } from "#tests/support/visit-factories.ts";
import { clockAtHome, doneAtVisit, noLetterWords, toBring, whenAtHome } from "./visit-letter.ts";

const today = day("2026-11-06");

describe("whether there is a letter", () => {
  const asked = (
    state: Parameters<typeof noLetterWords>[0]["state"],
    on = "2026-11-11",
    by: string | null = null,
  ) => noLetterWords({ state, on: day(on), by }, today);

  it.each(["proposed", "booked", "confirmed"] as const)("there is one while it is %s", (state) => {
    expect(asked(state)).toBeNull();
    expect(asked(state, "2026-11-06")).toBeNull();
    expect(asked(state, "2026-11-05")).toBe(
      "The day of this visit, Thu 5 Nov 2026, has passed: move it, or book another one, and print its letter.",
    );
  });

  it.each([
    ["cancelled", "This visit is cancelled by the ward: there is no letter for it."],
    ["did not attend", "Nobody came to this visit: book another one and print its letter."],
    ["arrived", "The patient is here for this visit already: there is no letter for it."],
    ["done", "This visit is done: there is no letter for it."],
  ] as const)("there is none, and it is said why, when it is %s", (state, says) => {
    expect(asked(state, "2026-11-11", "the ward")).toBe(says);
  });
});

it.each([
  ["00:00", "12:00 in the morning (00:00)"],
  ["09:30", "9:30 in the morning (09:30)"],
  ["11:59", "11:59 in the morning (11:59)"],
  ["12:00", "noon (12:00)"],
  ["12:05", "12:05 in the afternoon (12:05)"],
  ["14:00", "2:00 in the afternoon (14:00)"],
  ["17:59", "5:59 in the afternoon (17:59)"],
  ["18:00", "6:00 in the evening (18:00)"],
])("%s is told as %s", (clock, says) => {
  expect(clockAtHome(minute(clock))).toBe(says);
});

it("the date is told in full with its weekday; a time that is not known is said", () => {
  expect(whenAtHome(day("2026-11-11"), here("09:30"))).toBe(
    "Wednesday 11 November 2026, at 9:30 in the morning (09:30)",
  );
  expect(whenAtHome(day("2026-02-28"), { kind: "elsewhere", where: "the ward", from: null })).toBe(
    "Saturday 28 February 2026. The time is not in our record: ask there",
  );
});

it("what is done is told in plain words, the tube as the patient may call it", () => {
  const [tube] = fold(history(placed({ kind: "nephrostomy", side: "left" }))).tubes;
  if (tube === undefined) throw new Error("a tube was placed");
  const [exchange, check, removal] = visitActs.map((act) => doneAtVisit(tube, "Left nephrostomy", act));
  expect(exchange).toBe(
    "The tube in your left kidney (Left nephrostomy) is changed for a new one, over a thin wire.",
  );
  expect(check).toBe("The tube in your left kidney (Left nephrostomy) is checked.");
  expect(removal).toBe("The tube in your left kidney (Left nephrostomy) is taken out.");
});

describe("what to bring", () => {
  it("medicines and the sentence about blood thinners stand whatever the rows ask for", () => {
    expect(toBring([])).toEqual({
      bring: [
        "This letter, and your tube card if you have one.",
        "A list of all your medicines, with any blood thinners on it. Do not stop any medicine unless we tell you.",
        "Your output diary, if you keep one.",
      ],
      tell: [],
    });
  });

  it("is by what the rows ask for: somebody to go home with is brought, allergies are told", () => {
    const { bring, tell } = toBring(["allergies", "escort"]);
    expect(bring.at(-1)).toMatch(/^Somebody who takes you home/);
    expect(tell).toHaveLength(1);
    expect(tell[0]).toMatch(/^every allergy that you know of/);
  });

  it("every thing of the closed list is told but an order and what stands in the list of medicines", () => {
    const silent = prerequisiteThings.filter((thing) => {
      const { bring, tell } = toBring([thing]);
      return bring.length === 3 && tell.length === 0;
    });
    expect(silent).toEqual(["signed order", "blood thinners"]);
  });

  it("stops no medicine and names no hours: those are somebody's to tell", () => {
    const { bring, tell } = toBring(prerequisiteThings);
    expect([...bring, ...tell].join(" ")).not.toMatch(/\d|stop taking|hold your/i);
  });
});
