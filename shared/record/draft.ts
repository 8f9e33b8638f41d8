import * as z from "zod";

/** Which form, about what: the id of a patient or tube, the address of a row, or "" for a form that opens a new one. */
export const draftKeySchema = z.strictObject({
  form: z.string().regex(/^[a-z][a-z0-9.-]{0,59}$/),
  subject: z.string().max(160),
});

/** What was typed, as it was typed. The act id goes along: an act whose answer was lost is not entered again from its draft. */
export const draftContentSchema = z.strictObject({
  actId: z.string().regex(/^[\w-]{16,64}$/),
  texts: z.record(z.string().max(300), z.string().max(20_000, "text-too-long")),
});
export type DraftContent = z.infer<typeof draftContentSchema>;

export const draftSchema = z.strictObject({ ...draftKeySchema.shape, content: draftContentSchema });

/** In characters of JSON. Longer than any form; short enough that nobody fills the disk with it. */
export const DRAFT_LIMIT = 65_536;

export const DRAFT_LIFE_MS = 7 * 24 * 60 * 60 * 1000;
