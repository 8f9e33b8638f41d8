import { describe, expect, it } from "vitest";
import { refusalSentence } from "#shared/words/refusals.ts";
import { telephoneForm } from "./telephone-form.ts";

const read = (phone: string) => telephoneForm.read({ phone }, { phone: "555 0100" });

describe("the number that patients ring", () => {
  it.each(["555 0100", "+44 20 5550 0100", "(0)20-5550.0100", "555 0100 ext 12", "555 0100 x 12", "999"])(
    '"%s" is kept as it is typed',
    (typed) => {
      expect(read(` ${typed} `)).toEqual({ ok: true, entry: { phone: typed } });
    },
  );

  it("may be left out: papers then have a line to write it on", () => {
    expect(read("  ")).toEqual({ ok: true, entry: { phone: "" } });
    expect(telephoneForm.fields({ phone: "" }).phone.echo?.("")).toBe("none: a line to write it on");
  });

  it.each(["the ward", "555 0100 after 5 pm", "555 0100, 555 0199 at night", "call 555 0100", "5"])(
    '"%s" is asked again with what to mend',
    (typed) => {
      const answer = read(typed);
      expect(answer).toMatchObject({
        ok: false,
        refusals: [{ code: "clinic-telephone-not-understood", field: "phone" }],
      });
      if (!answer.ok)
        expect(answer.refusals.map(refusalSentence)).toEqual([
          `"${typed}" is not one telephone number. Type it as it is dialed, with nothing after it, or leave it blank.`,
        ]);
    },
  );

  it("has at most 40 characters", () => {
    expect(read("5".repeat(40)).ok).toBe(true);
    expect(read("5".repeat(41))).toMatchObject({ ok: false, refusals: [{ code: "text-too-long" }] });
  });

  it("opens with the number that stands", () => {
    expect(telephoneForm.fields({ phone: "555 0100" }).phone.initial).toBe("555 0100");
  });
});
