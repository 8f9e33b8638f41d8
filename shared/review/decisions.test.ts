import { describe, expect, it } from "vitest";
import type { Role } from "#shared/tube/vocabulary.ts";
import { type Decision, decisions, decisionsFor, isDecidedKind } from "./decisions.ts";

describe("what may be decided of a tube (common practice, no source)", () => {
  it.each<[Role, readonly Decision[]]>([
    ["collection", []],
    ["drains an organ", ["to suction"]],
    ["air and fluid", []],
    ["intermittent", ["to suction", "cap or clamp trial"]],
    ["internal", ["flush differently", "to suction", "fluid tests", "cap or clamp trial"]],
    ["feeding", ["to suction", "second drain", "fluid tests"]],
    ["venting", ["to suction", "second drain"]],
    ["irrigation access", ["to suction", "second drain", "fluid tests"]],
  ])("%s: everything but %j, in the order of the list", (role, not) => {
    const offered = decisionsFor(role);
    expect(decisions.filter((what) => !offered.includes(what))).toEqual(not);
    expect(offered).toEqual(decisions.filter((what) => offered.includes(what)));
    expect(offered.slice(0, 2)).toEqual(["leave in", "remove"]);
  });

  it("leaving in and removing set a day; each of the others is a step of its own", () => {
    expect(decisions.filter((what) => !isDecidedKind(what))).toEqual(["leave in", "remove"]);
  });
});
