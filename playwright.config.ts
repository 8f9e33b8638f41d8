import { defineConfig } from "@playwright/test";

/** Lists under the address bar. They are pages too: each window would load both before it shows its first page, which nobody sees. */
const windowParts = ["WebUIOmniboxPopup", "WebUIOmniboxAimPopup", "WebUIOmniboxFullPopup"];

/** The browser heeds the last such list alone, so that what the test library leaves out stands here again. */
const byLibrary = [
  "AvoidCorsURLLoaderRestartOnRedirect",
  "AvoidUnnecessaryBeforeUnloadCheckSync",
  "AimEnabled",
  "DestroyProfileOnBrowserClose",
  "HttpsFirstBalancedModeAutoEnable",
  "HttpsUpgrades",
  "LensOverlay",
  "MediaRouter",
  "NetworkTimeServiceQuerying",
  "OptimizationHints",
  "PaintHolding",
  "PreconnectToSearch",
  "ThirdPartyStoragePartitioning",
];

const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  `--disable-features=${[...windowParts, ...byLibrary].join(",")}`,
];

const desktop = { viewport: { width: 1280, height: 800 } };
const phone = { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true };

/** The browser stands in another zone than the clinic: a day that comes from the browser's clock shows itself. */
export default defineConfig({
  testDir: "tests/e2e",
  outputDir: "tests/.cache/browser",
  globalSetup: "tests/e2e/support/seed-template.ts",
  workers: 2,
  retries: 0,
  forbidOnly: true,
  // How fast a machine is, no test asks: the limits only end what hangs.
  timeout: 90_000,
  expect: { timeout: 15_000 },
  use: {
    launchOptions: { executablePath: process.env.CHROMIUM_PATH || "/usr/bin/chromium", args: flags },
    locale: "en-US",
    timezoneId: "Pacific/Kiritimati",
  },
  projects: [
    { name: "desktop", use: desktop, testIgnore: "**/*.phone.spec.ts" },
    { name: "phone", use: phone, testMatch: "**/*.phone.spec.ts" },
  ],
});
