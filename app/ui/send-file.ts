import type { Problem } from "#app/ui/error-summary.tsx";
import { SHEET_LIMIT_KIB } from "#shared/sheet/sheet-limit.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

/** A file, or what was pasted in its place. */
export type FileBody = File | string;

/** What a form with the fields `file` and `pasted` holds; null where both are empty. */
export function fileIn(typed: FormData): FileBody | null {
  const file = typed.get("file");
  const pasted = String(typed.get("pasted") ?? "");
  const body = file instanceof File && file.size > 0 ? file : pasted;
  return typeof body === "string" && body.trim() === "" ? null : body;
}

const fieldOf = (body: FileBody): string => (typeof body === "string" ? "pasted" : "file");

/** Where a file goes, and how it is read there. */
export type FileRoute = {
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  /** What is said beside the file: then both go as one form, the file as `sheet`. */
  readonly texts?: Readonly<Record<string, string>>;
  /** Said where no answer came. */
  readonly unanswered: string;
};

export type FileSaid<T> =
  | { readonly ok: true; readonly said: T }
  | { readonly ok: false; readonly problem: Problem };

function formOf(body: FileBody, texts: Readonly<Record<string, string>>): FormData {
  const form = new FormData();
  for (const [name, text] of Object.entries(texts)) form.set(name, text);
  form.set("sheet", typeof body === "string" ? new Blob([body]) : body);
  return form;
}

/** Sends a file to a route of the API. What it refuses stands beside the field from which the file came. */
export async function sendFile<T>(
  body: FileBody,
  { url, headers, texts, unanswered }: FileRoute,
): Promise<FileSaid<T>> {
  const field = fieldOf(body);
  const refused = (sentence: string): FileSaid<T> => ({ ok: false, problem: { field, sentence } });
  if (typeof body !== "string" && body.size > SHEET_LIMIT_KIB * 1024)
    return refused(
      refusalSentence({ code: "file-too-large", args: { limit: `${SHEET_LIMIT_KIB / 1024} MB` } }),
    );
  try {
    const answer = await fetch(url, {
      method: "POST",
      headers,
      body: texts === undefined ? body : formOf(body, texts),
    });
    const said = (await answer.json()) as T | { readonly sentence: string };
    return answer.ok
      ? { ok: true, said: said as T }
      : refused((said as { readonly sentence: string }).sentence);
  } catch {
    return refused(unanswered);
  }
}
