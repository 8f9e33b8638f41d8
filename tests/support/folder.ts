import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A folder of its own for one test, gone with it: `using folder = testFolder()`. */
export function testFolder(): { readonly path: string; readonly in: (name: string) => string } & Disposable {
  const path = mkdtempSync(join(tmpdir(), "dwellbook-test-"));
  return {
    path,
    in: (name) => join(path, name),
    [Symbol.dispose]: () => rmSync(path, { recursive: true, force: true }),
  };
}
