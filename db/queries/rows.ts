/** Which rows of a long list are asked for: at most so many, after those skipped. */
export type Rows = { readonly limit: number; readonly skip: number };
