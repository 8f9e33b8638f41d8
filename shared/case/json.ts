/** What can stand in a file of cases and in a report. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [name: string]: Json };

export const isNamed = (value: Json | undefined): value is { readonly [name: string]: Json } =>
  typeof value === "object" && value !== null && !Array.isArray(value);
