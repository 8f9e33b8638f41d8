import { describe, expect, it } from "vitest";
import { readEnv } from "#server/env.ts";
import { refusalsOf } from "#tests/support/refusal.ts";

describe("settings", () => {
  it("with a database alone, the server stays on this machine", () => {
    expect(readEnv({ DATABASE_FILE: "clinic.sqlite" })).toEqual({
      DATABASE_FILE: "clinic.sqlite",
      HOST: "127.0.0.1",
      PORT: 3000,
      TRUSTED_PROXY: [],
    });
  });

  it("reads what is given, empty as not given", () => {
    const given = {
      PORT: "8080",
      TRUSTED_PROXY: "10.0.0.1, ::1",
      HOST: "",
      DATABASE_FILE: "/srv/clinic.sqlite",
    };
    expect(readEnv(given)).toEqual({
      DATABASE_FILE: "/srv/clinic.sqlite",
      HOST: "127.0.0.1",
      PORT: 8080,
      TRUSTED_PROXY: ["10.0.0.1", "::1"],
    });
  });

  it.each([
    ["PORT", "0"],
    ["PORT", "65536"],
    ["PORT", "80a"],
    ["PORT", "1e3"],
    ["TRUSTED_PROXY", "proxy.example"],
    ["TRUSTED_PROXY", "10.0.0.1,"],
  ])("%s=%s is named", (name, text) => {
    expect(refusalsOf(() => readEnv({ DATABASE_FILE: "clinic.sqlite", [name]: text }))).toEqual([
      { code: "setting-not-understood", args: { name, text } },
    ]);
  });

  it.each([{}, { DATABASE_FILE: "" }])("a database must be named: %o", (given) => {
    expect(refusalsOf(() => readEnv(given))).toEqual([
      { code: "setting-missing", args: { name: "DATABASE_FILE" } },
    ]);
  });
});
