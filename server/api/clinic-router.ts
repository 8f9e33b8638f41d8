import { procedure, router } from "#server/api/trpc.ts";
import { setTelephone } from "#server/clinic/set-telephone.ts";
import { viewClinic } from "#server/clinic/view-clinic.ts";
import { settingTelephoneSchema } from "#shared/record/act.ts";

/** Nothing of a patient is shown. */
const ofClinic = procedure.meta({ subject: { kind: "none" } });

export const clinicRouter = router({
  view: ofClinic.query(({ ctx }) => viewClinic(ctx.db)),
  telephone: ofClinic.input(settingTelephoneSchema).mutation(({ ctx, input }) => setTelephone(ctx, input)),
});
