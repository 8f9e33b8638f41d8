import type { BrowserContext, Page } from "@playwright/test";
import type { StaffRole } from "#shared/access/roles.ts";
import { test as base, expect, listen } from "#tests/e2e/support/test.ts";

type Kept = { readonly keptPages: (role: StaffRole) => Page[] };

type Lent = { readonly lend: (role: StaffRole) => Promise<Page> };

/**
 * As a new page of its own context would be, and left: what a page still sends while it is left, a draft of a record that is gone by then, belongs to
 * the test that is over.
 */
async function reset(page: Page, viewport: Parameters<Page["setViewportSize"]>[0] | null): Promise<void> {
  for (const heard of ["console", "pageerror", "request"] as const) page.removeAllListeners(heard);
  page.context().removeAllListeners("page");
  for (const other of page.context().pages()) if (other !== page) await other.close();
  await page.unrouteAll();
  await page.emulateMedia({ colorScheme: null, forcedColors: null, media: null });
  await page.goto("about:blank");
  if (viewport) await page.setViewportSize(viewport);
}

/**
 * For tests that leave the sign-in and the clock alone: pages go from test to test, each its role's, each with a context of
 * its own. A window, a process and the first run of the scripts would take longer than most of what a test reads.
 */
export const test = base.extend<Lent, Kept>({
  keptPages: [
    async ({ browserName: _unused }, use) => {
      const kept = new Map<StaffRole, Page[]>();
      await use((role) => {
        const pages = kept.get(role) ?? [];
        kept.set(role, pages);
        return pages;
      });
      for (const page of [...kept.values()].flat()) await page.context().close();
    },
    { scope: "worker" },
  ],
  // Not by `page`, which this gives: what it writes is heard from the beginning.
  complaints: async ({ browserName: _unused }, use) => {
    const complaints: string[] = [];
    await use(complaints);
    expect(complaints).toEqual([]);
  },
  lend: async ({ browser, clinic, stateOf, keptPages, complaints }, use, { project }) => {
    const { viewport, locale, timezoneId } = project.use;
    const lent: [StaffRole, Page][] = [];
    const opened = async (role: StaffRole): Promise<Page> => {
      const told = {
        baseURL: clinic.origin,
        storageState: await stateOf(role),
        locale,
        timezoneId,
        viewport,
      };
      const context: BrowserContext = await browser.newContext(told);
      return context.newPage();
    };
    await use(async (role) => {
      const page = keptPages(role).pop() ?? (await opened(role));
      listen(page, complaints);
      page.context().on("page", (other) => listen(other, complaints));
      lent.push([role, page]);
      return page;
    });
    for (const [role, page] of lent) {
      await reset(page, viewport ?? null);
      keptPages(role).push(page);
    }
  },
  pageOf: async ({ lend }, use) => use(lend),
  page: async ({ lend, role }, use) => {
    if (role === null) throw new Error("a kept page is somebody's: test.use({ role })");
    await use(await lend(role));
  },
});

export { expect };
