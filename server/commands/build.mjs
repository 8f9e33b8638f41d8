/** Builds the screens: only when a source has changed since the last build. */
import { createHash } from "node:crypto";
import { cpSync, existsSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";
import { run } from "./run.mjs";

const sources = [
  "app",
  "db",
  "server",
  "shared",
  "proxy.ts",
  "instrumentation.ts",
  "next.config.mjs",
  "package.json",
  "package-lock.json",
  "tsconfig.json",
];
const output = join(root, ".next");
const stamp = join(output, "dwellbook-source-hash");

/** The server that the build leaves behind. */
export const builtServer = join(output, "standalone", "server.js");

/** @param {string} path @returns {string[]} every file under it, in one order */
function filesUnder(path) {
  if (!existsSync(join(root, path))) return [];
  if (!statSync(join(root, path)).isDirectory()) return [path];
  return readdirSync(join(root, path))
    .sort()
    .flatMap((name) => filesUnder(`${path}/${name}`));
}

function sourceHash() {
  const hash = createHash("sha256").update(process.versions.modules);
  for (const file of sources.flatMap(filesUnder))
    hash.update(`\0${file}\0`).update(readFileSync(join(root, file)));
  return hash.digest("hex");
}

/** @returns {Promise<"built" | "already built">} Throws CommandFailed when the build fails. */
export async function build() {
  const hash = sourceHash();
  if (existsSync(builtServer) && existsSync(stamp) && readFileSync(stamp, "utf8") === hash)
    return "already built";
  rmSync(stamp, { force: true });
  await run(process.execPath, ["node_modules/next/dist/bin/next", "build"]);
  // The standalone server serves these only when they lie beside it; the build leaves that to us.
  cpSync(join(output, "static"), join(output, "standalone", ".next", "static"), { recursive: true });
  writeFileSync(stamp, hash);
  return "built";
}
