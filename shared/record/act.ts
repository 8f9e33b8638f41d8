import * as z from "zod";

const id = z.string().min(1).max(64);

/** Made by the form, so that sending again is the same act. */
export const actIdSchema = z.string().regex(/^[\w-]{16,64}$/);

/** What every recording form sends: its act, what it had seen, and what was typed, which the server reads again. */
export const submitSchema = z.strictObject({
  actId: actIdSchema,
  /** Sequence of the last event of the patient that the page had seen; 0 for none. */
  lastSeen: z.int().min(0),
  texts: z.record(z.string().max(300), z.string().max(20_000, "text-too-long")),
});
export type Submit = z.infer<typeof submitSchema>;

export const aboutPatientSchema = z.strictObject({ ...submitSchema.shape, patientId: id });
export const aboutTubeSchema = z.strictObject({ ...submitSchema.shape, patientId: id, tubeId: id });
export const amendingSchema = z.strictObject({ ...submitSchema.shape, patientId: id, eventId: id });
export const registeringSchema = z.strictObject({ actId: actIdSchema, texts: submitSchema.shape.texts });
export const correctingPatientSchema = z.strictObject({
  ...registeringSchema.shape,
  patientId: id,
  /** When the page last saw identity and contact change, ms. */
  lastUpdatedAt: z.int(),
});
export const correctingReadingSchema = z.strictObject({
  ...submitSchema.shape,
  patientId: id,
  readingId: id,
});
export const confirmingSchema = z.strictObject({
  actId: actIdSchema,
  lastSeen: z.int().min(0),
  patientId: id,
  tubeId: id,
});
/** Ids of proposals as a page showed them. */
export const confirmingSeveralSchema = z.strictObject({
  actId: actIdSchema,
  proposals: z.array(id).min(1).max(500),
});
export const amendingQuerySchema = z.strictObject({ patientId: id, eventId: id });
export const closingAccountSchema = z.strictObject({ ...registeringSchema.shape, closes: id });
/** `otherId`: the record that goes on in the one of `patientId` from now on. */
export const joiningSchema = z.strictObject({ ...registeringSchema.shape, patientId: id, otherId: id });
/** `lastUpdatedAt`: when the page last saw the type change, ms. */
export const shelvingSchema = z.strictObject({ actId: actIdSchema, typeId: id, lastUpdatedAt: z.int() });
export const changingShelfSchema = z.strictObject({
  ...shelvingSchema.shape,
  texts: submitSchema.shape.texts,
});
/** `seen`: the number that the page had seen. */
export const settingTelephoneSchema = z.strictObject({
  ...registeringSchema.shape,
  seen: z.string().max(60),
});
const revision = z.int().min(0);
/** The draft of the protocol as the page saw it. */
export const aboutDraftSchema = z.strictObject({ actId: actIdSchema, revision });
/** `address`: where the row stands in the table (shared/protocol/rows/address.ts). */
export const droppingDraftRowSchema = z.strictObject({
  ...aboutDraftSchema.shape,
  address: z.string().min(1).max(160),
});
export const changingDraftRowSchema = z.strictObject({
  ...droppingDraftRowSchema.shape,
  texts: submitSchema.shape.texts,
});
export const notingDraftSchema = z.strictObject({
  ...aboutDraftSchema.shape,
  texts: submitSchema.shape.texts,
});
export const signingSchema = z.strictObject({ ...aboutDraftSchema.shape, password: z.string().max(400) });
export const undoSchema = z.strictObject({ actId: actIdSchema, undoes: actIdSchema });

export type DroppingDraftRow = z.infer<typeof droppingDraftRowSchema>;
export type ChangingDraftRow = z.infer<typeof changingDraftRowSchema>;
export type NotingDraft = z.infer<typeof notingDraftSchema>;
export type SettingTelephone = z.infer<typeof settingTelephoneSchema>;
export type ClosingAccount = z.infer<typeof closingAccountSchema>;
export type Joining = z.infer<typeof joiningSchema>;
export type Shelving = z.infer<typeof shelvingSchema>;
export type ChangingShelf = z.infer<typeof changingShelfSchema>;
export type Registering = z.infer<typeof registeringSchema>;
export type CorrectingPatient = z.infer<typeof correctingPatientSchema>;
export type CorrectingReading = z.infer<typeof correctingReadingSchema>;
export type Amending = z.infer<typeof amendingSchema>;
export type Confirming = z.infer<typeof confirmingSchema>;
export type ConfirmingSeveral = z.infer<typeof confirmingSeveralSchema>;
export type AboutPatient = z.infer<typeof aboutPatientSchema>;
export type AboutTube = z.infer<typeof aboutTubeSchema>;
