/** Whoever is told how far a list has come that is being brought in. */
export type Telling = {
  readonly read: (rows: number) => void;
  /** All rows are read. Writing them is one act, in which nothing more can be told; it begins when this is done. */
  readonly writing: (seconds: number) => Promise<void> | void;
};
