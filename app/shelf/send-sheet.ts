import type { BroughtToShelf, ShelfPreview } from "#app/shelf/shelf-preview.ts";
import type { Problem } from "#app/ui/error-summary.tsx";
import { SHEET_LIMIT_KIB } from "#shared/sheet/sheet-limit.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** A file or a pasted block, and the letters that it is written in; "" where they are found. */
export type SentSheet = { readonly body: File | string; readonly encoding: string };

const fieldOf = ({ body }: SentSheet): string => (typeof body === "string" ? "pasted" : "file");

const tooLarge = (sheet: SentSheet): Problem => ({
  field: fieldOf(sheet),
  sentence: refusalSentence({ code: "file-too-large", args: { limit: `${SHEET_LIMIT_KIB / 1024} MB` } }),
});

type Said<T> = { readonly ok: true; readonly said: T } | { readonly ok: false; readonly problem: Problem };

async function send<T>(sheet: SentSheet, asks: Readonly<Record<string, string>>): Promise<Said<T>> {
  const { body, encoding } = sheet;
  const isFile = typeof body !== "string";
  if (isFile && body.size > SHEET_LIMIT_KIB * 1024) return { ok: false, problem: tooLarge(sheet) };
  const field = fieldOf(sheet);
  const headers = { "x-encoding": isFile ? encoding : "utf-8", ...asks };
  try {
    const answer = await fetch("/api/shelf", { method: "POST", headers, body });
    const said = (await answer.json()) as T | { readonly sentence: string };
    if (answer.ok) return { ok: true, said: said as T };
    const { sentence } = said as { readonly sentence: string };
    return { ok: false, problem: { field, sentence } };
  } catch {
    const sentence = "No answer came from the server. Send the sheet again: it is brought in only once.";
    return { ok: false, problem: { field, sentence } };
  }
}

/** How the sheet would stand. Nothing is written. */
export const previewSheet = (sheet: SentSheet): Promise<Said<ShelfPreview>> => send(sheet, {});

/** Brings the sheet onto the shelf; what is there already is changed only where that is said. */
export const bringSheet = (
  sheet: SentSheet,
  { actId, changes }: { readonly actId: string; readonly changes: boolean },
): Promise<Said<BroughtToShelf>> => send(sheet, { "x-act-id": actId, "x-changes": changes ? "yes" : "no" });
