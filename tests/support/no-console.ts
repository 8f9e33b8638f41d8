import { format } from "node:util";
import { afterEach, beforeEach, expect, vi } from "vitest";

/** Console output fails the test that made it: a warning that nobody reads is a fault that nobody mends. */
const methods = ["log", "info", "warn", "error", "debug", "trace"] as const;
let written: string[] = [];

beforeEach(() => {
  written = [];
  for (const method of methods) {
    vi.spyOn(console, method).mockImplementation((...args: unknown[]) => {
      written.push(`console.${method}: ${format(...args)}`);
    });
  }
});

afterEach(() => {
  expect(written).toEqual([]);
});
