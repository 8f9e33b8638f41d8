import type { BroughtToShelf, ShelfPreview } from "#app/shelf/shelf-preview.ts";
import { type FileBody, type FileSaid, sendFile } from "#app/ui/send-file.ts";

/** A file or a pasted block, and the letters that it is written in; "" where they are found. */
export type SentSheet = { readonly body: FileBody; readonly encoding: string };

const send = <T>(
  { body, encoding }: SentSheet,
  asks: Readonly<Record<string, string>>,
): Promise<FileSaid<T>> =>
  sendFile<T>(body, {
    url: "/api/shelf",
    headers: { "x-encoding": typeof body === "string" ? "utf-8" : encoding, ...asks },
    unanswered: "No answer came from the server. Send the sheet again: it is brought in only once.",
  });

/** How the sheet would stand. Nothing is written. */
export const previewSheet = (sheet: SentSheet): Promise<FileSaid<ShelfPreview>> => send(sheet, {});

/** Brings the sheet onto the shelf; what is there already is changed only where that is said. */
export const bringSheet = (
  sheet: SentSheet,
  { actId, changes }: { readonly actId: string; readonly changes: boolean },
): Promise<FileSaid<BroughtToShelf>> =>
  send(sheet, { "x-act-id": actId, "x-changes": changes ? "yes" : "no" });
