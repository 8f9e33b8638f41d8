/** What is done with a tube at a visit. */
export const visitActs = ["exchange", "check", "removal"] as const;
export type VisitAct = (typeof visitActs)[number];
