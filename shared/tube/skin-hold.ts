import type { SkinHold } from "#shared/tube/vocabulary.ts";

const names: readonly (readonly [SkinHold, string])[] = [
  ["anchors", "(?:anchors?|t[- ]?(?:fasteners?|bars?|tacks?)|fasteners?)"],
  ["suture", "(?:sutur(?:e|es|ed)|stitch(?:es|ed)?)"],
];
const any = `(?:${names.map(([, name]) => name).join("|")})`;

/** "No anchors", "without anchors or sutures": said to be none. */
const saidNone = new RegExp(`\\b(?:no|0|zero|without) ${any}(?: n?or ${any})*\\b`, "g");

const plain = (text: string): string => text.trim().toLowerCase().replaceAll(/\s+/g, " ");

/** Whether a text about the fixation says that there are none of these. "Disc" says nothing of them. */
export function saysNone(fixation: string, holds: SkinHold): boolean {
  const text = plain(fixation);
  const name = names.find(([hold]) => hold === holds)?.[1] ?? any;
  return (
    text === "none" || (text.match(saidNone) ?? []).some((said) => new RegExp(`\\b${name}\\b`).test(said))
  );
}

/**
 * What a text about the fixation names: anchors before a suture, which lie there the longer; null where it names neither, or says that there
 * is none. Whatever else it says of them ("anchors removed?", "suture loose") names them: what cannot be read is asked.
 */
export function skinHoldIn(fixation: string): SkinHold | null {
  const text = plain(fixation).replaceAll(saidNone, "");
  return names.find(([, name]) => new RegExp(`\\b${name}\\b`).test(text))?.[0] ?? null;
}
