/** Installs what is missing: only when the lock file, or the Node that compiled the database, has changed. */
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./root.mjs";
import { run } from "./run.mjs";

const stamp = join(root, "node_modules", ".dwellbook-lock-hash");

/** Compiled packages fit one Node interface on one kind of machine, so these belong to the hash. */
function wanted() {
  const lock = createHash("sha256")
    .update(readFileSync(join(root, "package-lock.json")))
    .digest("hex");
  return `${lock} node-${process.versions.modules} ${process.platform}-${process.arch}\n`;
}

/** @returns {Promise<"installed" | "already there">} Throws CommandFailed when npm fails. */
export async function install() {
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted()) return "already there";
  await run("npm", ["ci", "--no-audit", "--no-fund"]);
  writeFileSync(stamp, wanted());
  return "installed";
}
