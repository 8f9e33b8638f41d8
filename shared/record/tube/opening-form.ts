import { whenUnknown } from "#shared/day/when.ts";
import { type Parsed, parsed } from "#shared/errors/refusal.ts";
import { kindField } from "#shared/record/field/kind-field.ts";
import { planField } from "#shared/record/field/plan-field.ts";
import { sideField } from "#shared/record/field/side-field.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import { optionalWhenField, whenField } from "#shared/record/field/when-field.ts";
import type { FieldSpec } from "#shared/record/field-spec.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";
import { notBeforeTube } from "#shared/record/not-before-tube.ts";
import { SIZE_HINT } from "#shared/record/tube/fact-fields.ts";
import { sizeOrShelfField } from "#shared/record/tube/from-shelf.ts";
import { openingDetails, openingOf, openingRefusals } from "#shared/record/tube/opening-fields.ts";

/** Where the tube came from: null when it was placed here, `place` null when it came from a place that nobody knows. */
type CameFrom = { readonly place: string | null } | null;

function fromField(): FieldSpec<CameFrom> {
  const words = {
    label: "Taken over from",
    hint: "blank: placed here; ? if the place is unknown",
    detail: true,
  };
  const { read } = lineField(words);
  return {
    ...words,
    read: (text): Parsed<CameFrom> => {
      const place = read(text);
      if (!place.ok) return place;
      return parsed(place.value === null ? null : { place: place.value === "?" ? null : place.value });
    },
    echo: (from) => (from === null ? "Placed here" : `Taken over from ${from.place ?? "an unknown place"}`),
  };
}

/** Record a tube: five fields, and whatever else is known. */
export const openingForm = form({
  fields: (context: FormContext) => ({
    kind: kindField({ label: "Kind" }),
    side: sideField({ label: "Side", hint: "l, r, midline, tx; ? if unknown" }),
    size: sizeOrShelfField({ label: "Size", hint: SIZE_HINT }, context),
    when: whenField({ label: "Placed, or last exchanged, on" }, context),
    plan: planField({ label: "Plan" }, context),
    from: fromField(),
    tractSince: optionalWhenField(
      { label: "Punctured on", hint: "if taken over, where the tract is older than the tube", detail: true },
      context,
    ),
    ...openingDetails(context),
  }),
  check: (values) => {
    const { from, tractSince, when, plan } = values;
    const since = (tractSince ?? when).when.earliest;
    const refusals = [...openingRefusals(values), ...notBeforeTube("plan", plan?.by ?? null, since)];
    if (tractSince === undefined) return refusals;
    if (from === null)
      refusals.push({
        code: "text-missing",
        field: "from",
        args: { what: "where it was taken over from (? if unknown), or leave the puncture blank" },
      });
    const [punctured, placed] = [tractSince.when.earliest, when.when.latest];
    if (punctured !== null && placed !== null && punctured > placed)
      refusals.push({ code: "tract-after-tube", field: "tractSince" });
    return refusals;
  },
  entry: (values, { opens }): EntryOf<"placed"> | EntryOf<"taken over"> => {
    const { when, from, tractSince } = values;
    const opening = openingOf(values, { number: opens.number, toldByOthers: from !== null });
    if (from === null) return { kind: "placed", ...when, payload: opening };
    const tract = { from: from.place, tractSince: tractSince?.when ?? whenUnknown };
    return { kind: "taken over", ...when, payload: { ...opening, ...tract } };
  },
});
