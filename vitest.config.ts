import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/** Rooms that compute with days run in UTC with the rest, and again under each of these; tests/support/assert-zone.ts knows their offsets. */
const zones = ["America/Los_Angeles", "Pacific/Kiritimati", "America/Santiago"];

/** How fast a machine is, no test asks: the limit only ends what hangs. */
const testTimeout = 60_000;

const setupFiles = ["tests/support/no-console.ts", "tests/support/generated-cases.ts"];

/** Threads ignore env.TZ, so zone projects fork. */
const zoneProject = (zone: string) => ({
  test: {
    name: `zone ${zone}`,
    include: [
      "shared/day/**/*.test.ts",
      "shared/step/**/*.test.ts",
      "shared/output/**/*.test.ts",
      "shared/visit/**/*.test.ts",
    ],
    pool: "forks" as const,
    env: { TZ: zone },
    isolate: false,
    testTimeout,
    setupFiles: ["tests/support/assert-zone.ts", ...setupFiles],
  },
});

export default defineConfig({
  test: {
    // By itself it leaves one of the cores free, which on a machine with two is half of them.
    maxWorkers: availableParallelism(),
    projects: [
      // Pure functions share a worker: loading everything anew for each file takes four times as long.
      {
        test: {
          name: "unit",
          include: ["shared/**/*.test.ts", "tests/app/**/*.test.ts"],
          pool: "forks",
          env: { TZ: "UTC" },
          setupFiles: ["tests/support/assert-zone.ts", ...setupFiles],
          isolate: false,
          testTimeout,
        },
      },
      ...zones.map(zoneProject),
      {
        test: {
          name: "server",
          include: ["tests/{server,db,support}/**/*.test.ts"],
          setupFiles,
          testTimeout,
          pool: "forks",
        },
      },
    ],
  },
});
