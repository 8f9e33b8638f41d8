import * as z from "zod";
import { staffRoles } from "#shared/access/roles.ts";

/** A new account. The password is checked apart, where it is hashed. */
export const accountSchema = z.strictObject({
  userName: z
    .string()
    .trim()
    .regex(/^[a-z][a-z0-9.-]{1,39}$/, "user-name-not-understood"),
  fullName: z.string().trim().min(1, "text-missing").max(120, "text-too-long"),
  role: z.enum(staffRoles, "choice-unknown"),
  isApprover: z.boolean(),
});
export type Account = z.infer<typeof accountSchema>;
