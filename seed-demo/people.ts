import type { Account } from "#shared/record/account.ts";

/** Who works in the invented clinic, with what each signs in with. Nobody's password anywhere else. */
export const people: readonly (Account & { readonly password: string })[] = [
  {
    userName: "tansy",
    fullName: "Tansy Nurseworth",
    role: "nurse",
    isApprover: false,
    password: "seven quiet herons",
  },
  {
    userName: "corin",
    fullName: "Corin Callwell",
    role: "caller",
    isApprover: false,
    password: "eleven slow barges",
  },
  {
    userName: "petra",
    fullName: "Petra Physick",
    role: "physician",
    isApprover: true,
    password: "nine green lanterns",
  },
  {
    userName: "lorne",
    fullName: "Lorne Leadbeater",
    role: "lead",
    isApprover: false,
    password: "four patient kettles",
  },
];
