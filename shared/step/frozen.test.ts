import { describe, expect, it } from "vitest";
import { eventKinds } from "#shared/tube/event-kinds.ts";
import { frozenEvents, frozenReleases, frozenResults, resultsOf } from "#tests/support/frozen.ts";

describe("events of past releases", () => {
  it.each(frozenReleases())("%s: fold to the same state and steps as then", (release) => {
    expect(resultsOf(frozenEvents(release))).toEqual(frozenResults(release));
  });

  it("hold every kind of event at least once", () => {
    const kinds = frozenReleases().flatMap((release) =>
      frozenEvents(release).patients.flatMap(({ events }) => events.map(({ kind }) => kind)),
    );
    expect([...new Set(kinds)].toSorted()).toEqual([...eventKinds].toSorted());
  });
});
