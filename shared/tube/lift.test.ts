import { describe, expect, it } from "vitest";
import { placed } from "#tests/support/factories.ts";
import { eventKinds } from "./event-kinds.ts";
import { climb, type Lift, lift, payloadVersion } from "./lift.ts";

describe("climbing from version to version", () => {
  const adds =
    (name: string): Lift =>
    (payload) => ({ ...(payload as object), [name]: true });
  /** Two steps: the newest version is 3. */
  const ladder = [adds("second"), adds("third")];

  it.each([
    [1, { second: true, third: true }],
    [2, { third: true }],
    [3, {}],
  ])("from version %i takes each step after it, once", (version, value) => {
    expect(climb(ladder, version, {})).toEqual({ ok: true, value });
  });

  it("from a version that is not yet known is refused, naming both", () => {
    expect(climb(ladder, 4, {})).toEqual({
      ok: false,
      refusal: { code: "entry-newer", args: { version: 4, newest: 3 } },
    });
  });

  it.each([0, -1, 1.5, Number.NaN])("from %d is refused: there is no such version", (version) => {
    expect(climb(ladder, version, {})).toMatchObject({ refusal: { code: "entry-not-understood" } });
  });
});

describe("a stored payload", () => {
  it("at the newest version comes back as its kind reads it", () => {
    const { payload } = placed();
    expect(lift("placed", payloadVersion("placed"), payload)).toEqual({ ok: true, value: payload });
  });

  it.each(eventKinds)("%s: one version beyond the newest is refused", (kind) => {
    const refused = lift(kind, payloadVersion(kind) + 1, {});
    expect(refused).toMatchObject({ ok: false, refusal: { code: "entry-newer" } });
  });

  it("that does not read is refused with the field", () => {
    expect(lift("verified", 1, { how: "" })).toEqual({
      ok: false,
      refusal: { code: "entry-not-understood", args: { field: "how" } },
    });
    expect(lift("verified", 1, null)).toMatchObject({ ok: false });
  });
});
