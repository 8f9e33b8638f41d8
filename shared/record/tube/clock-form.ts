import { onDay } from "#shared/day/when.ts";
import { lineField } from "#shared/record/field/text-field.ts";
import { optionalWhenField, whenField } from "#shared/record/field/when-field.ts";
import { type EntryOf, type FormContext, form } from "#shared/record/form.ts";

/** Date a clock that started on a day nobody knew, or knew only roughly. */
export const clockForm = form({
  fields: (context: FormContext) => ({
    catheterSince: whenField(
      { label: "Tube in since", initial: "", hint: "14 nov, in march, 10-20 nov" },
      context,
    ),
    tractSince: optionalWhenField({ label: "Punctured on", hint: "blank: leave as it stands" }, context),
    how: lineField({ label: "Found how", hint: "operation note, discharge letter, patient" }),
  }),
  check: ({ catheterSince, tractSince }) => {
    const [punctured, placed] = [tractSince?.when.earliest ?? null, catheterSince.when.latest];
    if (placed === null) return [{ code: "day-missing", field: "catheterSince" }];
    return punctured !== null && punctured > placed
      ? [{ code: "tract-after-tube", field: "tractSince" }]
      : [];
  },
  entry: ({ catheterSince, tractSince, how }, { today }): EntryOf<"clock dated"> => ({
    kind: "clock dated",
    when: onDay(today),
    time: null,
    payload: { catheterSince: catheterSince.when, tractSince: tractSince?.when ?? null, how },
  }),
});
