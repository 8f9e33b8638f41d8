import { type ClinicServer, serveClinic } from "#tests/e2e/support/clinic-server.ts";
import { test as base } from "#tests/e2e/support/test.ts";

/** A clinic of its own, for a test that moves its clock or changes what stands on every page. */
export const test = base.extend<object, { clinic: ClinicServer }>({
  clinic: [
    async ({ browserName: _unused }, use) => {
      const clinic = await serveClinic();
      await use(clinic);
      await clinic.stop();
    },
    { scope: "worker" },
  ],
});
