import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "../..");

const IMPORT = /^(?:import|export)\s+(?!type\s)([^"';]*?)\s*from\s*"([^"]+)"/gm;

/** `{ type A, type B }` leaves nothing behind when types are taken away. */
const namesOnlyTypes = (names: string): boolean =>
  /^\{[^}]*\}$/s.test(names) &&
  names
    .slice(1, -1)
    .split(",")
    .every((name) => name.trim() === "" || name.trim().startsWith("type "));

/** Everything that a browser loads with this file, packages by name and files of shared/ by path. */
function loadedWith(file: string, seen: Set<string>): Set<string> {
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const [, names = "", from = ""] of readFileSync(join(root, file), "utf8").matchAll(IMPORT)) {
    if (namesOnlyTypes(names)) continue;
    if (from.startsWith("#")) loadedWith(from.slice(1), seen);
    else if (from.startsWith("./")) loadedWith(join(file, "..", from), seen);
    else seen.add(from);
  }
  return seen;
}

const filesOf = (folder: string, ending: RegExp): string[] =>
  readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => ending.test(name))
    .map((name) => join(folder, name));

const forms = filesOf("shared/record", /-forms?\.ts$/);
const words = filesOf("shared/words", /(?<!\.test)\.ts$/);

/** Measured: the schema library is 25 KB gzip of script, and a form needs none of it, since the server reads every text again. */
it.each([...forms, ...words])("%s loads no schema library", (file) => {
  expect([...loadedWith(file, new Set())]).not.toContain("zod");
});

it("sees what a file loads", () => {
  expect(forms.length).toBeGreaterThan(15);
  expect([...loadedWith("shared/record/tube/opening-form.ts", new Set())]).toEqual(
    expect.arrayContaining(["shared/size/read-length.ts", "@date-fns/tz"]),
  );
  expect([...loadedWith("shared/tube/payloads.ts", new Set())]).toContain("zod");
});
