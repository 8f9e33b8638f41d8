import { dirname } from "node:path";
import { fileURLToPath } from "node:url";

/** The project's own folder, wherever the command was called from. */
export const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
