import { procedure, router } from "#server/api/trpc.ts";
import { closeAccountByForm } from "#server/staff/close-account-form.ts";
import { listStaff } from "#server/staff/list-staff.ts";
import { closingAccountSchema } from "#shared/record/act.ts";

/** Nothing of a patient is shown. */
const ofStaff = procedure.meta({ subject: { kind: "none" } });

export const staffRouter = router({
  list: ofStaff.query(({ ctx }) => listStaff(ctx.db)),
  close: ofStaff.input(closingAccountSchema).mutation(({ ctx, input }) => closeAccountByForm(ctx, input)),
});
