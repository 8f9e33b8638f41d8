import { type BrowserContext, test as base, expect, type Page } from "@playwright/test";
import type { StaffRole } from "#shared/access/roles.ts";
import { type ClinicServer, serveClinic } from "#tests/e2e/support/clinic-server.ts";
import { type EnteredTube, enterTube, type Said } from "#tests/e2e/support/enter-tube.ts";
import { signInOf } from "#tests/e2e/support/template.ts";

type State = Awaited<ReturnType<BrowserContext["storageState"]>>;

type TestFixtures = {
  /** Who is signed in: `test.use({ role: "nurse" })`. Null: nobody. */
  readonly role: StaffRole | null;
  /** What pages wrote to the console, threw, or were refused by their policy (which the browser writes there too). Must be empty when the test ends. */
  readonly complaints: string[];
  /** A page of its own for somebody of that role, beside the page of the test. */
  readonly pageOf: (role: StaffRole) => Promise<Page>;
  /** A patient with one tube, entered by whoever the page of the test is signed in as. */
  readonly newTube: (said?: Said) => Promise<EnteredTube>;
};

type WorkerFixtures = {
  readonly clinic: ClinicServer;
  /** One sign-in a role and worker; its cookie serves every test. */
  readonly stateOf: (role: StaffRole) => Promise<State>;
};

const nobody: State = { cookies: [], origins: [] };

/** Gathers what a page writes to the console or throws. */
export function listen(page: Page, complaints: string[]): void {
  page.on("console", (message) => complaints.push(`console ${message.type()}: ${message.text()}`));
  page.on("pageerror", (error) => complaints.push(`page error: ${error.message}`));
}

/** Each request that fails stands in the console of the browser: takes those away that say so, and finds no other complaint. */
export function expectOnly(complaints: string[], failure: string): void {
  expect(complaints.splice(0).filter((text) => !text.includes(failure))).toEqual([]);
}

/** Through the page, as a person does. */
export async function signIn(page: Page, role: StaffRole): Promise<void> {
  const { userName, password } = signInOf(role);
  await page.goto("/sign-in?next=/keys");
  await page.getByLabel("User name").fill(userName);
  await page.getByLabel("Password").fill(password);
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "Sign out" })).toBeVisible();
}

export const test = base.extend<TestFixtures, WorkerFixtures>({
  clinic: [
    // The library insists on a pattern and the lint on a pattern that is not empty.
    async ({ browserName: _unused }, use) => {
      const clinic = await serveClinic();
      await use(clinic);
      await clinic.stop();
    },
    { scope: "worker" },
  ],
  stateOf: [
    async ({ browser, clinic }, use) => {
      const states = new Map<StaffRole, Promise<State>>();
      const signedIn = async (role: StaffRole): Promise<State> => {
        // The runner would hand on who the test is signed in as, and a sign-in in that place ends theirs.
        const context = await browser.newContext({ baseURL: clinic.origin, storageState: nobody });
        await signIn(await context.newPage(), role);
        const state = await context.storageState();
        await context.close();
        return state;
      };
      await use((role) => {
        const state = states.get(role) ?? signedIn(role);
        states.set(role, state);
        return state;
      });
    },
    { scope: "worker" },
  ],
  role: [null, { option: true }],
  complaints: [
    async ({ context }, use) => {
      const complaints: string[] = [];
      context.on("page", (page) => listen(page, complaints));
      await use(complaints);
      expect(complaints).toEqual([]);
    },
    { auto: true },
  ],
  pageOf: async ({ browser, clinic, stateOf, complaints }, use) => {
    const contexts: BrowserContext[] = [];
    await use(async (role) => {
      const context = await browser.newContext({ baseURL: clinic.origin, storageState: await stateOf(role) });
      contexts.push(context);
      const page = await context.newPage();
      listen(page, complaints);
      return page;
    });
    for (const context of contexts) await context.close();
  },
  newTube: async ({ page, clinic }, use) => {
    await use((said) => enterTube({ request: page.request, origin: clinic.origin }, said));
  },
  baseURL: async ({ clinic }, use) => {
    await use(clinic.origin);
  },
  storageState: async ({ role, stateOf }, use) => {
    await use(role === null ? undefined : await stateOf(role));
  },
});

export { expect };
