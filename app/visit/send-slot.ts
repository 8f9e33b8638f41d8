import { api } from "#app/_trpc/client.ts";
import type { Act } from "#app/ui/recording/use-recording.ts";
import type { Texts } from "#shared/record/field-spec.ts";
import type { ActOnTube } from "#shared/visit/visit.ts";

/** What a slot is for: a new visit for these tubes, or one that is moved. */
export type SendSlot =
  | {
      readonly kind: "book";
      readonly patientId: string;
      readonly tubes: readonly ActOnTube[];
      readonly urgent: boolean;
      /** What stands in the address of days on which the patient cannot come. */
      readonly notOn: string;
    }
  | { readonly kind: "move"; readonly patientId: string; readonly visitId: string; readonly urgent: boolean };

/** Sends a slot as it was typed or picked. */
export function sendSlot(to: SendSlot, texts: Texts, act: Act) {
  const { patientId, urgent } = to;
  if (to.kind === "move")
    return api.visit.moved.mutate({ ...act, patientId, visitId: to.visitId, urgent, texts });
  return api.visit.booked.mutate({
    ...act,
    patientId,
    tubes: [...to.tubes],
    urgent,
    texts: { notOn: to.notOn, ...texts },
  });
}
