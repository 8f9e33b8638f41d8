import { defineConfig } from "vitest/config";

/** What can tell a spoilt size or passage from a whole one: the unit tests of both rooms and of the words that print them. */
export default defineConfig({
  test: {
    include: [
      "shared/size/**/*.test.ts",
      "shared/fit/**/*.test.ts",
      "shared/words/passage.test.ts",
      "tests/app/bore-drawing.test.ts",
    ],
    setupFiles: ["tests/support/no-console.ts", "tests/support/generated-cases.ts"],
  },
});
