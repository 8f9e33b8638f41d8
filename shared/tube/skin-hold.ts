import type { SkinHold } from "#shared/tube/vocabulary.ts";

const names: readonly (readonly [SkinHold, string])[] = [
  ["anchors", "(?:anchors?|t[- ]?(?:fasteners?|bars?|tacks?)|fasteners?)"],
  ["suture", "(?:sutur(?:e|es|ed)|stitch(?:es|ed)?)"],
];
const any = `(?:${names.map(([, name]) => name).join("|")})`;

/** "No anchors", "without anchors or sutures": said to be none. */
const saidNone = new RegExp(`\\b(?:no|0|zero|without) ${any}(?: n?or ${any})*\\b`, "g");

/**
 * What a text about the fixation names: anchors before a suture, which lie there the longer; null where it names neither, or says that there
 * is none. Whatever else it says of them ("anchors removed?", "suture loose") names them: what cannot be read is asked.
 */
export function skinHoldIn(fixation: string): SkinHold | null {
  const text = fixation.toLowerCase().replaceAll(/\s+/g, " ").replaceAll(saidNone, "");
  return names.find(([, name]) => new RegExp(`\\b${name}\\b`).test(text))?.[0] ?? null;
}
