import { spawn } from "node:child_process";
import { root } from "./root.mjs";

/** A command that could not do its work. The message is the sentence for the reader; `output` is what it printed. */
export class CommandFailed extends Error {
  /** @param {string} message @param {string} output */
  constructor(message, output = "") {
    super(message);
    this.name = "CommandFailed";
    this.output = output;
  }
}

/**
 * Runs a program in the project's folder and waits for it.
 * @param {string} program @param {string[]} args
 * @param {{ env?: Record<string, string> }} [options] `env` is added to this process's own
 * @returns {Promise<string>} what it wrote to stdout. Throws CommandFailed with all its output when it fails.
 */
export function run(program, args, { env = {} } = {}) {
  const child = spawn(program, args, {
    cwd: root,
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: "1", NO_COLOR: "1", ...env },
    stdio: ["ignore", "pipe", "pipe"],
  });
  let stdout = "";
  let all = "";
  child.stdout.setEncoding("utf8").on("data", (text) => {
    stdout += text;
    all += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text) => {
    all += text;
  });
  return new Promise((resolve, reject) => {
    child.on("error", () => reject(new CommandFailed(`${program} is not installed on this machine.`)));
    child.on("close", (code) => {
      if (code === 0) resolve(stdout);
      else reject(new CommandFailed(`${[program, ...args].join(" ")} ended with ${code}.`, all));
    });
  });
}

/**
 * Runs a TypeScript file of the project. It speaks for itself: what it wrote is the message when it fails.
 * @param {string} file @param {string[]} args
 */
export async function runTypeScript(file, ...args) {
  try {
    return (await run(process.execPath, ["node_modules/tsx/dist/cli.mjs", file, ...args])).trim();
  } catch (error) {
    throw error instanceof CommandFailed ? new CommandFailed(error.output.trim()) : error;
  }
}
