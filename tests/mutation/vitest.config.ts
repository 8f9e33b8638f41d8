import { defineConfig } from "vitest/config";

/** What can tell a spoilt rule of these rooms from a whole one: their own unit tests, and those of what is printed, or opened, by them. */
export default defineConfig({
  test: {
    include: [
      "shared/{size,fit,output,review,visit}/**/*.test.ts",
      "shared/words/{passage,criterion,alarm-why,trend,chart,output,fluid-tests,together,offers,prerequisites}.test.ts",
      "shared/step/{alarm-step,ask-again,review-steps}.test.ts",
      "shared/record/output/reading-doubts.test.ts",
      "tests/app/bore-drawing.test.ts",
    ],
    setupFiles: ["tests/support/no-console.ts", "tests/support/generated-cases.ts"],
  },
});
