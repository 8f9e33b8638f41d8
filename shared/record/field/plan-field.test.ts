import { describe, expect, it } from "vitest";
import { formContext } from "#tests/factories/form-context.ts";
import { planField, readPlan } from "./plan-field.ts";

/** Today is Fri 6 Nov 2026. */
const context = formContext();
const plan = planField({ label: "Plan" }, context);

describe("a plan as it is dictated", () => {
  it.each([
    ["exchange by 30 dec", "exchange", "2026-12-30", null, null, "Exchange by Wed 30 Dec 2026"],
    [
      "exchange by 30 dec Dr Example",
      "exchange",
      "2026-12-30",
      "Dr Example",
      null,
      "Exchange by Wed 30 Dec 2026, Dr Example",
    ],
    ["ex 30 oct 2027", "exchange", "2027-10-30", null, null, "Exchange by Sat 30 Oct 2027"],
    ["remove by +90", "remove", "2027-02-04", null, null, "Remove by Thu 4 Feb 2027"],
    [
      "review 14 nov because it still leaks",
      "review",
      "2026-11-14",
      null,
      "it still leaks",
      "Review by Sat 14 Nov 2026, because it still leaks",
    ],
    [
      "Remove on 2026-12-01 by Dr Example, because the stone is out",
      "remove",
      "2026-12-01",
      "Dr Example",
      "the stone is out",
      "Remove by Tue 1 Dec 2026, Dr Example, because the stone is out",
    ],
  ])("%j", (text, act, by, byWhom, reason, echo) => {
    const value = { act, by, byWhom, reason };
    expect(plan.read(text)).toEqual({ ok: true, value });
    const read = readPlan(text, context);
    expect(read.ok && plan.echo?.(read.value)).toBe(echo);
  });

  it.each(["Remove by Thu 4 Feb 2027, Dr Example, because the stone is out", "Exchange by Wed 30 Dec 2026"])(
    "reads back what it prints: %s",
    (text) => {
      const read = readPlan(text, context);
      expect(read.ok && plan.echo?.(read.value)).toBe(text);
    },
  );

  it.each(["", "  ", "as protocol", "protocol", "As the row"])("%j leaves it to the row", (text) => {
    expect(plan.read(text)).toEqual({ ok: true, value: null });
    expect(plan.echo?.(null)).toBe("As the protocol's row");
  });

  it.each([
    ["soon", "plan-not-understood"],
    ["exchange", "plan-not-understood"],
    ["exchange by march", "day-not-exact"],
    ["exchange by 3/4/2027", "day-order-unclear"],
    ["exchange by 31 feb", "day-does-not-exist"],
    ["exchange by 31 feb Dr Example", "day-does-not-exist"],
    ["exchange by fri 30 dec 2026 Dr Example", "weekday-differs"],
    ["remove by whenever", "plan-not-understood"],
    [`review 14 nov because ${"long ".repeat(60)}`, "text-too-long"],
  ])("%j is refused: %s", (text, code) => {
    expect(plan.read(text)).toMatchObject({ ok: false, refusal: { code } });
  });
});
