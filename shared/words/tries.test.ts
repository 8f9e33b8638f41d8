import { expect, it } from "vitest";
import { fold } from "#shared/tube/fold.ts";
import { letterSent, rang } from "#tests/support/call-factories.ts";
import { type Entry, placed } from "#tests/support/factories.ts";
import { history } from "#tests/support/told.ts";
import { triesText } from "./tries.ts";

const story = (...entries: readonly Entry[]) => triesText(fold(history(placed(), ...entries)).calls);

it("tells a ladder in one line, the first try first", () => {
  expect(
    story(
      rang({ outcome: "voicemail", number: "555 0117" }),
      rang({ on: "2026-08-18", to: "the alternate contact" }),
      letterSent({ on: "2026-08-19", at: undefined }),
    ),
  ).toBe(
    "voicemail, Mon 17 Aug 2026, 10:00, on 555 0117; the alternate contact: no answer, Tue 18 Aug 2026, 10:00; letter to the patient, Wed 19 Aug 2026, 10:00",
  );
});

it("tells nothing where nothing was tried since somebody was last reached", () => {
  expect(story()).toBeNull();
  expect(story(rang(), rang({ on: "2026-08-18", outcome: "reached the patient" }))).toBeNull();
});
