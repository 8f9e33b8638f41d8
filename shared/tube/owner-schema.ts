import * as z from "zod";
import { ownerRoles } from "#shared/tube/step-kinds.ts";

/** A role, or one person of it. */
export const ownerSchema = z.union([
  z.strictObject({ role: z.enum(ownerRoles) }),
  z.strictObject({ role: z.enum(ownerRoles), staffId: z.string() }),
]);
