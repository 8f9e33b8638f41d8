import { describe, expect, it } from "vitest";
import { isWorkList, type OwnPlace, placed, workLists } from "./work-list.ts";

describe("an order of one's own", () => {
  const order = ["a", "b", "c"];
  const told: readonly (readonly [string, OwnPlace, readonly string[]])[] = [
    ["c", { at: "first" }, ["c", "a", "b"]],
    ["d", { at: "first" }, ["d", "a", "b", "c"]],
    ["c", { at: "before", of: "b" }, ["a", "c", "b"]],
    ["a", { at: "behind", of: "b" }, ["b", "a", "c"]],
    ["a", { at: "behind", of: "nobody" }, ["b", "c", "a"]],
    ["b", { at: "its own" }, ["a", "c"]],
    ["z", { at: "its own" }, ["a", "b", "c"]],
  ];

  it.each(told)("%s put %j", (id, place, expected) => {
    expect(placed(order, id, place)).toEqual(expected);
  });

  it.each(told)("%s put %j twice stands as put once", (id, place) => {
    const once = placed(order, id, place);
    expect(placed(once, id, place)).toEqual(once);
  });
});

describe("a list by its word in an address", () => {
  it.each(workLists)("%s is one", (list) => {
    expect(isWorkList(list)).toBe(true);
  });

  it.each(["", "Due", "exchanges", "out"])("%s is none", (word) => {
    expect(isWorkList(word)).toBe(false);
  });
});
