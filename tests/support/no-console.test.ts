import { it } from "vitest";

it.fails.each(["log", "info", "warn", "error", "debug"] as const)(
  "console.%s fails the test that calls it",
  (method) => {
    console[method]("nobody reads this");
  },
);
