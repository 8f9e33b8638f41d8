import type { Page } from "@playwright/test";
import type { StaffRole } from "#shared/access/roles.ts";
import { test as base, expect, listen } from "#tests/e2e/support/test.ts";

type Kept = { readonly keptPage: (role: StaffRole) => Promise<Page> };

/**
 * For tests that only read: each role has one page a worker, which goes from test to test. A window, a process and the first
 * run of the scripts for each test would take longer than most of what is read.
 */
export const test = base.extend<object, Kept>({
  keptPage: [
    async ({ browser, clinic, stateOf }, use, { project }) => {
      const pages = new Map<StaffRole, Promise<Page>>();
      const opened = async (role: StaffRole): Promise<Page> => {
        const { viewport, locale, timezoneId } = project.use;
        const context = await browser.newContext({
          baseURL: clinic.origin,
          storageState: await stateOf(role),
          ...{ viewport, locale, timezoneId },
        });
        return context.newPage();
      };
      await use((role) => {
        const page = pages.get(role) ?? opened(role);
        pages.set(role, page);
        return page;
      });
      for (const page of pages.values()) await (await page).context().close();
    },
    { scope: "worker" },
  ],
  complaints: async ({ page }, use) => {
    const complaints: string[] = [];
    listen(page, complaints);
    await use(complaints);
    expect(complaints).toEqual([]);
  },
  page: async ({ keptPage, role }, use, { project }) => {
    if (role === null) throw new Error("a kept page is somebody's: test.use({ role })");
    const page = await keptPage(role);
    await use(page);
    page.removeAllListeners("console").removeAllListeners("pageerror");
    await page.emulateMedia({ colorScheme: null, forcedColors: null, media: null });
    if (project.use.viewport) await page.setViewportSize(project.use.viewport);
  },
});

export { expect };
