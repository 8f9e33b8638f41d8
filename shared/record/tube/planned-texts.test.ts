import { describe, expect, it } from "vitest";
import { confirmed, unknownFact } from "#shared/tube/certainty.ts";
import type { ExchangePlanned } from "#shared/tube/exchange-planned.ts";
import { F, inch } from "#tests/support/factories.ts";
import { plannedAct, plannedTexts } from "./planned-texts.ts";

const planned = (said: Partial<ExchangePlanned> = {}): ExchangePlanned => ({
  on: null,
  kind: "nephrostomy",
  size: confirmed(F(10)),
  takes: confirmed(inch(0.038)),
  wire: confirmed(inch(0.035)),
  seen: [],
  ...said,
});
const tube = (plan: ExchangePlanned | null, size = confirmed(F(8))) => ({
  size,
  plannedExchange: plan === null ? null : { ...plan, eventId: "e1" },
});

describe("a planned exchange that is done", () => {
  it.each([
    ["upsized", tube(planned())],
    ["downsized", tube(planned({ size: confirmed(F(6)) }))],
    ["exchanged", tube(planned({ size: confirmed(F(8)) }))],
    ["exchanged", tube(planned({ size: unknownFact }))],
    ["exchanged", tube(null)],
  ] as const)("is recorded as %s", (act, of) => {
    expect(plannedAct(of)).toBe(act);
  });

  it("stands filled in as its package says, and reads again as it was planned", () => {
    expect(plannedTexts(planned(), [])).toEqual({ size: "10 F", takes: "0.038 in", fullLength: "" });
  });

  it("what is not known stays blank, what is estimated says so", () => {
    const about = { certainty: "estimated", value: F(10) } as const;
    expect(plannedTexts(planned({ size: about, takes: unknownFact }), [])).toMatchObject({
      size: "~10 F",
      takes: "",
    });
  });
});
