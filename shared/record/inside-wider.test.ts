import { describe, expect, it } from "vitest";
import { eventForms } from "#shared/record/event-forms.ts";
import { plannedExchangeForm } from "#shared/record/tube/planned-exchange-form.ts";
import { confirmed } from "#shared/tube/certainty.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { cm } from "#tests/factories/coaxial.ts";
import { formContext } from "#tests/factories/form-context.ts";
import { shelfType } from "#tests/factories/shelf-type.ts";

const context = formContext();

// 5 F is 1.67 mm.
describe("an inside that is wider than its outside is asked about", () => {
  it.each([
    ["placed", { kind: "pcn l", size: "5 f", when: "today", bores: "shaft 1.9 mm" }],
    ["exchanged", { when: "today", size: "5 f", bores: "end hole 1.9 mm" }],
    ["facts noted", { size: "5 f", bores: "shaft 1.9 mm" }],
    ["exchange planned", { size: "5 f", bores: "shaft 1.9 mm" }],
  ] as const)("%s", (form, texts) => {
    const read = eventForms[form].read(texts, context);
    expect(read).toMatchObject({
      ok: false,
      refusals: [{ code: "inside-wider-than-outside", field: "bores" }],
    });
    expect(read.ok ? "" : read.refusals.map(refusalSentence).join()).toContain(
      "is wider than the outside (5 F): check both",
    );
  });

  it("a hub may be, and so may an inside of an unknown outside", () => {
    expect(eventForms["facts noted"].read({ size: "5 f", bores: "hub 2.2 mm" }, context).ok).toBe(true);
    expect(eventForms["facts noted"].read({ size: "?", bores: "shaft 2.2 mm" }, context).ok).toBe(true);
  });
});

describe("a wire that is longer than any on the shelf", () => {
  const shelf = [shelfType({ sort: "wire", name: "Long", length: confirmed(cm(260)) })];
  const doubt = (of: typeof context, text: string) => {
    const { wireLength } = plannedExchangeForm.fields(of);
    const read = wireLength.read(text);
    return read.ok ? (wireLength.doubt?.(read.value, text) ?? null) : "not read";
  };

  it("is asked about and taken", () => {
    expect(doubt(formContext({ shelf }), "300")).toBe(
      "The longest wire on the shelf is 260 cm: is 300 cm meant?",
    );
    expect(plannedExchangeForm.read({ wireLength: "300" }, formContext({ shelf })).ok).toBe(true);
  });

  it.each(["260", "145", "?", ""])("of %j nothing is asked", (text) => {
    expect(doubt(formContext({ shelf }), text)).toBeNull();
  });

  it("nothing is asked where no wire stands on the shelf", () => {
    expect(doubt(context, "300")).toBeNull();
  });
});
