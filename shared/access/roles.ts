/** Who works here. A physician may besides be an approver, who signs protocol versions. */
export const staffRoles = ["nurse", "caller", "physician", "lead"] as const;
export type StaffRole = (typeof staffRoles)[number];
