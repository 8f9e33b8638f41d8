import { procedure, router } from "#server/api/trpc.ts";
import { viewProtocol } from "#server/protocol/view-protocol.ts";

export const protocolRouter = router({
  view: procedure.meta({ subject: { kind: "none" } }).query(({ ctx }) => viewProtocol(ctx.db)),
});
