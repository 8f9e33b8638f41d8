import { describe, expect, it } from "vitest";
import { day } from "#shared/day/day.ts";
import { instant } from "#shared/day/instant.ts";
import { eventForms } from "#shared/record/event-forms.ts";
import { comingDayField } from "#shared/record/field/day-field.ts";
import { planField } from "#shared/record/field/plan-field.ts";
import { optionalWhenField, whenField } from "#shared/record/field/when-field.ts";
import { readField } from "#shared/record/field-spec.ts";
import { readingForm } from "#shared/record/output/reading-form.ts";
import { formContext } from "#tests/factories/form-context.ts";

/** Wed 25 Nov 2026, noon. */
const context = formContext({
  today: day("2026-11-25"),
  now: instant(Date.parse("2026-11-25T12:00Z")),
});
const when = whenField({ label: "Exchanged on" }, context);

describe("a day of this year that is still to come, typed for what happened", () => {
  it.each([
    ["30 nov", "Sun 30 Nov 2025", "Mon 30 Nov 2026"],
    ["30 nov 14:05", "Sun 30 Nov 2025, 14:05", "Mon 30 Nov 2026"],
    ["~30 nov", "about Sun 30 Nov 2025", "Mon 30 Nov 2026"],
    ["26 nov", "Wed 26 Nov 2025", "Thu 26 Nov 2026"],
    ["in december", "December 2025", "December 2026"],
    ["24 jan", "Sat 24 Jan 2026", "Sun 24 Jan 2027"],
  ])("%s is last year's, which is said", (text, echo, coming) => {
    const doubt = `${coming} is still to come, so the year before was taken.`;
    expect(readField(when, text)).toEqual({ echo, doubt });
  });

  it.each(["25 nov", "24 nov", "25 jan", "30 nov 2025", "in november", "today", "-3", "2025", "?"])(
    "%s is nothing to ask about: today, past, more than 60 days ahead, or with its year",
    (text) => {
      expect(readField(when, text)).not.toHaveProperty("doubt");
    },
  );

  it("is said of every date that lies behind: one that may stay blank, and a reading's", () => {
    const doubt = "Mon 30 Nov 2026 is still to come, so the year before was taken.";
    const optional = optionalWhenField({ label: "Punctured on" }, context);
    expect(readField(optional, "30 nov")).toMatchObject({ doubt });
    expect(readField(optional, "")).toEqual({});
    const { to, from } = readingForm.fields(context);
    expect(readField(to, "30 nov 14:05")).toMatchObject({ doubt });
    expect(readField(from, "30 nov 14:05")).toMatchObject({ doubt });
  });
});

describe("a planned day that has passed", () => {
  const doubt = "That was 55 days ago: is it the day that is meant?";

  it.each([
    ["exchange by 1 oct 2026", doubt],
    ["review by yesterday", "That was yesterday: is it the day that is meant?"],
    ["exchange by today", undefined],
    ["exchange by 1 oct", undefined],
    ["", undefined],
  ])("plan %j", (text, asked) => {
    expect(readField(planField({ label: "Plan" }, context), text).doubt).toBe(asked);
    const alone = eventForms["plan recorded"].fields(context).plan;
    expect(readField(alone, text).doubt).toBe(asked);
  });

  it("is asked about wherever a day to come is typed", () => {
    expect(readField(comingDayField({ label: "Until", what: "the day" }, context), "1 oct 2026")).toEqual({
      echo: "Thu 1 Oct 2026",
      doubt,
    });
    const { on } = eventForms["exchange planned"].fields(context);
    expect(readField(on, "1 oct 2026")).toMatchObject({ doubt });
    expect(readField(on, "")).toEqual({});
  });
});
