import { isAbsolute, join } from "node:path";

/** A file or folder as it was named in the folder in which the command was called: npm itself moves to the project's. */
export const fileNamed = (named: string): string =>
  isAbsolute(named) ? named : join(process.env.INIT_CWD ?? process.cwd(), named);
