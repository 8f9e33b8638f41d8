/** Finds the browser for the browser tests; installs Debian's own when it may. */
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { CommandFailed, run } from "./run.mjs";

const names = ["chromium", "chromium-browser"];

/** @returns {string | undefined} */
function found() {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== "") {
    if (!existsSync(named))
      throw new CommandFailed(`CHROMIUM_PATH names ${named}, and there is no such file.`);
    return named;
  }
  const folders = (process.env.PATH ?? "").split(delimiter);
  return names.flatMap((name) => folders.map((folder) => join(folder, name))).find(existsSync);
}

/** The browser that the test library brought for itself, where somebody has let it. */
async function ofTestLibrary() {
  try {
    const { chromium: library } = await import("@playwright/test");
    return existsSync(library.executablePath()) ? library.executablePath() : undefined;
  } catch {
    return undefined;
  }
}

async function installed() {
  if (process.getuid?.() !== 0 || !existsSync("/usr/bin/apt-get")) return undefined;
  const env = { DEBIAN_FRONTEND: "noninteractive" };
  await run("apt-get", ["update"], { env });
  await run("apt-get", ["install", "--yes", "--no-install-recommends", "chromium"], { env });
  return found();
}

/** @returns {Promise<string>} the path of a Chromium. Throws CommandFailed with the one command that mends it. */
export async function chromium() {
  const path = found() ?? (await ofTestLibrary()) ?? (await installed());
  if (path === undefined) {
    throw new CommandFailed(
      "There is no Chromium for the browser tests. Install it with: sudo apt-get install chromium",
    );
  }
  return path;
}
