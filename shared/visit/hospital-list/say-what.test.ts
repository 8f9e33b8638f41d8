import { describe, expect, it } from "vitest";
import { type WhatSaid, whatSaid } from "./say-what.ts";

const nothing: WhatSaid = { act: null, kind: null, side: null, both: false };

describe("what a booking says", () => {
  it.each<readonly [string, Partial<WhatSaid>]>([
    ["", {}],
    ["IR", {}],
    ["PCN exchange, left", { act: "exchange", kind: "nephrostomy", side: "left" }],
    ["Exchange of right nephrostomy", { act: "exchange", kind: "nephrostomy", side: "right" }],
    ["LT NEPHROSTOMY CHANGE", { act: "exchange", kind: "nephrostomy", side: "left" }],
    ["nephrostomy exchange", { act: "exchange", kind: "nephrostomy" }],
    ["tube change right side", { act: "exchange", side: "right" }],
    ["abscess drain removal", { act: "removal", kind: "abscess drain" }],
    ["tubogram", { act: "check" }],
    ["JJ exchange left", { act: "exchange", kind: "ureteral stent", side: "left" }],
    ["bilateral nephrostomy exchange", { act: "exchange", kind: "nephrostomy", both: true }],
    // Two acts, or two sides, say neither.
    ["exchange or removal", {}],
    ["left or right?", {}],
  ])("%j", (cell, said) => {
    expect(whatSaid(cell)).toEqual({ ...nothing, ...said });
  });
});
