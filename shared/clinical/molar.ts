/**
 * What 1 mg/dL of each is in umol/L: 10,000 over the molar mass in g/mol, of bilirubin (C33H36N4O6) 584.66 and of creatinine (C4H7N3O) 113.12.
 * A decimal as text, so that who counts exactly can.
 */
export const UMOL_PER_MG_DL = { bilirubin: "17.104", creatinine: "88.402" } as const;
