import { procedure, router } from "#server/api/trpc.ts";
import { listStaff } from "#server/staff/list-staff.ts";

export const staffRouter = router({
  list: procedure.meta({ subject: { kind: "none" } }).query(({ ctx }) => listStaff(ctx.db)),
});
