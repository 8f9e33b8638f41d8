import { describe, expect, it } from "vitest";
import { access, isProcedure, may, type Procedure } from "#shared/access/may.ts";
import { staffRoles } from "#shared/access/roles.ts";

describe("who may do what", () => {
  it.each(Object.keys(access) as Procedure[])(
    "%s names somebody, nobody twice, and no role is unknown",
    (name) => {
      const actors: readonly string[] = access[name];
      expect(actors.length).toBeGreaterThan(0);
      expect(new Set(actors).size).toBe(actors.length);
      expect(
        actors.filter((actor) => actor !== "approver" && !staffRoles.some((role) => role === actor)),
      ).toEqual([]);
    },
  );

  it.each(staffRoles)("the answer for a %s is what the line says", (role) => {
    for (const name of Object.keys(access) as Procedure[]) {
      const actors: readonly string[] = access[name];
      expect(may({ role, isApprover: false }, name)).toBe(actors.includes(role));
    }
  });

  it.each(["", "draft", "draft.load.x", "constructor", "toString", "__proto__"])(
    "%j is no procedure",
    (path) => {
      expect(isProcedure(path)).toBe(false);
    },
  );
});
