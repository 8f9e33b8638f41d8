import { CommandFailed } from "./run.mjs";

/**
 * One step with its progress line: what it does, a sign of life while it lasts, how it ended, how long it took.
 * @template T
 * @param {string} what @param {() => Promise<T>} work the line ends with what it returns, if that is text
 * @returns {Promise<T>}
 */
export async function step(what, work) {
  const began = Date.now();
  process.stdout.write(`${what} ...`);
  const alive = setInterval(() => process.stdout.write("."), 5000);
  try {
    const result = await work();
    const seconds = ((Date.now() - began) / 1000).toFixed(1);
    process.stdout.write(` ${typeof result === "string" ? result : "done"} (${seconds} s)\n`);
    return result;
  } catch (error) {
    process.stdout.write(" failed\n");
    throw error;
  } finally {
    clearInterval(alive);
  }
}

/** Runs a command's steps; ends with one sentence and exit code 1 when one of them fails. @param {() => Promise<void>} steps */
export async function command(steps) {
  try {
    await steps();
  } catch (error) {
    if (!(error instanceof CommandFailed)) throw error;
    if (error.output !== "") console.error(error.output.trimEnd());
    console.error(error.message);
    process.exitCode = 1;
  }
}
