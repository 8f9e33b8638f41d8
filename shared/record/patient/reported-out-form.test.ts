import { describe, expect, it } from "vitest";
import type { NumberedTube } from "#shared/record/form.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { reportedOutForm } from "./reported-out-form.ts";

const tube = (number: number, side: "left" | "right", rest: Partial<NumberedTube> = {}): NumberedTube => ({
  id: `tube-${number}`,
  number,
  kind: "ureteral stent",
  side: confirmed(side),
  status: "in",
  ...rest,
});

const beside = formContext({
  tube: null,
  tubes: [
    tube(1, "left"),
    tube(2, "left", { kind: "nephrostomy" }),
    tube(3, "right"),
    tube(4, "left", { status: "ended" }),
  ],
});
const read = (texts: Record<string, string>) => reportedOutForm.read(texts, beside);

describe("hard case 22: the form", () => {
  it("asks of each tube that is in; those that share a side may be meant unless said", () => {
    const fields = Object.values<{ label: string; initial?: string }>(reportedOutForm.fields(beside));
    const tubes = fields.filter(({ label }) => label.startsWith("It may be"));
    expect(tubes.map(({ label, initial }) => [label, initial])).toEqual([
      ["It may be: Left ureteral stent (tube 1)", "yes"],
      ["It may be: Left nephrostomy (tube 2)", "yes"],
      ["It may be: Right ureteral stent (tube 3)", "no"],
    ]);
  });

  it("keeps who told it, when, and the tubes that may be meant", () => {
    expect(read({ toldBy: "urology", when: "yesterday", note: "the stent or the drain" })).toMatchObject({
      ok: true,
      entry: {
        kind: "reported out",
        when: { earliest: "2026-11-05" },
        payload: {
          candidates: [
            { tube: "tube-1", number: 1 },
            { tube: "tube-2", number: 2 },
          ],
          toldBy: "urology",
          note: "the stent or the drain",
        },
      },
    });
  });

  it("wants two at least, and a name", () => {
    expect(read({ toldBy: "urology", tube2: "no" })).toMatchObject({
      refusals: [{ code: "candidates-too-few" }],
    });
    expect(read({})).toMatchObject({ refusals: [{ code: "text-missing", field: "toldBy" }] });
  });
});
