import { describe, expect, it } from "vitest";
import { eventKinds } from "#shared/tube/event-kinds.ts";
import {
  asThen,
  type FrozenResults,
  frozenEvents,
  frozenReleases,
  frozenResults,
  resultsOf,
  withoutCalls,
} from "#tests/support/frozen.ts";

describe("events of past releases", () => {
  it.each(frozenReleases())("%s: fold to the same state and steps as then", (release) => {
    const isBefore = release < "0.7.0";
    const read = (results: FrozenResults) => (isBefore ? withoutCalls(results) : results);
    const then = read(frozenResults(release));
    const now = read(resultsOf(frozenEvents(release)));
    expect(asThen(JSON.parse(JSON.stringify(now)), JSON.parse(JSON.stringify(then)))).toEqual(then);
  });

  it("hold every kind of event at least once", () => {
    const kinds = frozenReleases().flatMap((release) =>
      frozenEvents(release).patients.flatMap(({ events }) => events.map(({ kind }) => kind)),
    );
    expect([...new Set(kinds)].toSorted()).toEqual([...eventKinds].toSorted());
  });
});
