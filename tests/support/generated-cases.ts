import fc from "fast-check";

/** How many generated cases a law is tried with: one setting for all, lowered where a suite runs thousands of times. */
fc.configureGlobal({ numRuns: Number(process.env.GENERATED_CASES ?? 100) });
