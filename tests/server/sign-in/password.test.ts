import { describe, expect, it } from "vitest";
import { hashPassword, passwordFits } from "#server/sign-in/password.ts";
import { laterRefusalsOf } from "#tests/support/refusal.ts";

const PASSWORD = "four patient otters";

describe("a password", () => {
  it("is kept as Argon2id with 19 MiB and two passes", async () => {
    expect(await hashPassword(PASSWORD)).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  });

  it("fits its own hash and no other does", async () => {
    const kept = await hashPassword(PASSWORD);
    expect(await passwordFits(kept, PASSWORD)).toBe(true);
    expect(await passwordFits(kept, `${PASSWORD} `)).toBe(false);
    expect(await passwordFits(null, PASSWORD)).toBe(false);
  });

  it.each([
    [
      "11 characters",
      "a".repeat(11),
      [{ code: "password-too-short", field: "password", args: { limit: 12 } }],
    ],
    ["12 characters", "a".repeat(12), []],
    ["200 characters", "a".repeat(200), []],
    [
      "201 characters",
      "a".repeat(201),
      [{ code: "password-too-long", field: "password", args: { limit: 200 } }],
    ],
  ])("of %s", async (_, password, refusals) => {
    expect(await laterRefusalsOf(hashPassword(password))).toEqual(refusals);
  });

  it("for a name without an account costs as much time as with one", async () => {
    const kept = await hashPassword(PASSWORD);
    // The least of several: other work on the machine makes a run longer, never shorter.
    const leastTimeOf = async (stored: string | null): Promise<number> => {
      const times: number[] = [];
      for (let n = 0; n < 8; n += 1) {
        const began = performance.now();
        await passwordFits(stored, "three wrong otters");
        times.push(performance.now() - began);
      }
      return Math.min(...times);
    };
    const withAccount = await leastTimeOf(kept);
    const without = await leastTimeOf(null);
    // Leaving the hash out would be a thousand times as fast.
    expect(without).toBeGreaterThan(withAccount / 3);
    expect(without).toBeLessThan(withAccount * 3);
  });
});
