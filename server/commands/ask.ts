import { createInterface } from "node:readline/promises";
import { Writable } from "node:stream";
import { DomainError } from "#shared/errors/refusal.ts";

/** One thing that a command needs: what it is, in words. */
export type Question = { readonly what: string; readonly hidden?: boolean };

/** Shows the question and then, for a password, nothing of what is typed. */
function screen(hidden: boolean): Writable & { asked: boolean } {
  const out = new Writable({
    write(chunk, _, done) {
      if (!(hidden && out.asked)) process.stderr.write(chunk);
      done();
    },
  }) as Writable & { asked: boolean };
  out.asked = false;
  return out;
}

/** Asks at the terminal. Where nobody can answer, in a script, what is missing is refused by name. */
export async function ask({ what, hidden = false }: Question): Promise<string> {
  if (!process.stdin.isTTY) throw new DomainError({ code: "text-missing", args: { what } });
  const output = screen(hidden);
  const terminal = createInterface({ input: process.stdin, output, terminal: true });
  // Ctrl+C or Ctrl+D: without this the question would stay open and the command end without a word.
  const left = new Promise<never>((_, reject) => {
    terminal.once("close", () => reject(new DomainError({ code: "text-missing", args: { what } })));
  });
  try {
    const answer = terminal.question(`${what}: `);
    output.asked = true;
    return await Promise.race([answer, left]);
  } finally {
    terminal.close();
    if (hidden) process.stderr.write("\n");
  }
}
