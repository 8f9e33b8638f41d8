import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { besideWindow, causeWords, windowWords } from "./proposed-days.ts";

describe("proposed days in words", () => {
  it("tell the days that a step has, and those of its ladder where a proposal has them", () => {
    const window = { earliestOn: null, targetOn: day("2026-10-30"), latestOn: day("2026-11-06") };
    expect(windowWords(window)).toBe("target Fri 30 Oct 2026, latest Fri 6 Nov 2026");
    expect(windowWords({ ...window, escalatesOn: day("2026-11-02"), physicianOn: null })).toBe(
      "target Fri 30 Oct 2026, latest Fri 6 Nov 2026, a physician is asked from Mon 2 Nov 2026",
    );
  });

  it("say that there is no such step, or no day", () => {
    expect(windowWords(null)).toBe("no such step");
    expect(windowWords({ earliestOn: null })).toBe("no day");
  });

  it.each([
    ["protocol 3", "version 3 of the protocol"],
    ["protocol 3, calendar 2", "version 3 of the protocol, version 2 of the calendar"],
    ["rules 7", "newer rules of this program"],
  ])("%s is %s", (cause, words) => {
    expect(causeWords(cause)).toBe(words);
  });

  it("tell beside the window what comes up or goes, and the ladder where the window stays", () => {
    const window = { earliestOn: null, targetOn: day("2026-10-30"), latestOn: null };
    const asked = { ...window, escalatesOn: day("2026-11-02"), physicianOn: null };
    expect(besideWindow({ stood: null, proposed: window })).toBe("a new step");
    expect(besideWindow({ stood: window, proposed: null })).toBe("this step would go");
    expect(besideWindow({ stood: asked, proposed: { ...asked, escalatesOn: day("2026-11-04") } })).toBe(
      "a physician is asked from Wed 4 Nov 2026, now Mon 2 Nov 2026",
    );
    expect(besideWindow({ stood: asked, proposed: { ...asked, escalatesOn: null } })).toBe(
      "a physician is asked from no day, now Mon 2 Nov 2026",
    );
    expect(besideWindow({ stood: asked, proposed: { ...asked, targetOn: day("2026-10-16") } })).toBe("");
  });
});
