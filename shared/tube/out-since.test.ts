import { describe, expect, it } from "vitest";
import { type Instant, instant, zone } from "#shared/day/instant.ts";
import { outSinceWords } from "#shared/words/clocks.ts";
import { when } from "#tests/support/factories.ts";
import { outSince } from "./out-since.ts";

const here = zone("Europe/Berlin");
const at = (text: string): Instant => instant(Date.parse(text));

describe("how long a tube has been out", () => {
  it("counts whole hours from its time", () => {
    const since = outSince({ when: when("2026-11-04"), time: "09:40" }, at("2026-11-04T13:00+01:00"), here);
    expect(since).toEqual({ hours: 3, exact: true });
    expect(outSinceWords(since)).toBe("out for 3 hours");
  });

  it("is at most since the start of the first day that it may have been, where nobody knows the time", () => {
    const since = outSince(
      { when: when("2026-11-03..2026-11-04"), time: null },
      at("2026-11-04T13:00+01:00"),
      here,
    );
    expect(since).toEqual({ hours: 37, exact: false });
    expect(outSinceWords(since)).toBe("out for up to 37 hours, the time is not known");
  });

  it("counts hours and not clock faces over the turn of a clock: on 25 October 2026 the hour from 2 to 3 comes twice", () => {
    expect(outSince({ when: when("2026-10-25"), time: "01:30" }, at("2026-10-25T03:30+01:00"), here)).toEqual(
      {
        hours: 3,
        exact: true,
      },
    );
  });

  it("cannot be told without a day", () => {
    expect(outSinceWords(outSince({ when: when("?"), time: null }, at("2026-11-04T13:00Z"), here))).toBe(
      "out since an unknown day",
    );
  });
});
