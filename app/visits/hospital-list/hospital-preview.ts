import type { SignedIn } from "#app/_trpc/server.ts";
import { type FileBody, type FileSaid, sendFile } from "#app/ui/send-file.ts";

type VisitApi = SignedIn["api"]["visit"];

/** A hospital's list as it would stand, row by row. */
export type HospitalPreview = Awaited<ReturnType<VisitApi["hospitalPreviewed"]>>;
export type BroughtBookings = Awaited<ReturnType<VisitApi["hospitalBrought"]>>;
export type BookingAnswers = HospitalPreview["answers"];

type Row = HospitalPreview["rows"][number];
export type RowOf<S extends Row["stands"]> = Row & { readonly stands: S };

export const rowsThat = <S extends Row["stands"]>(
  { rows }: HospitalPreview,
  stands: S,
): readonly RowOf<S>[] => rows.filter((row): row is RowOf<S> => row.stands === stands);

/** A file or a pasted block, the letters that it is written in ("" where they are found), and what was answered. */
export type SentList = {
  readonly body: FileBody;
  readonly encoding: string;
  readonly answers: BookingAnswers;
};

const send = <T>({ body, encoding, answers }: SentList, more: Readonly<Record<string, string>>) =>
  sendFile<T>(body, {
    url: "/api/hospital-list",
    headers: {},
    texts: {
      ...more,
      encoding: typeof body === "string" ? "utf-8" : encoding,
      answers: JSON.stringify(answers),
    },
    unanswered: "No answer came from the server. Send the list again: it is brought in only once.",
  });

/** How the list would stand. Nothing is written. */
export const previewList = (list: SentList): Promise<FileSaid<HospitalPreview>> => send(list, {});

/** Brings in what leaves no doubt. */
export const bringList = (list: SentList, actId: string): Promise<FileSaid<BroughtBookings>> =>
  send(list, { actId });
