import { expect, test } from "#tests/e2e/support/test.ts";

const pages = ["/sign-in", "/no-such-page", "/keys"];

test("every page has a policy of its own, with a nonce that is never used again", async ({ request }) => {
  const nonces = new Set<string>();
  for (const path of [...pages, ...pages]) {
    const headers = (await request.get(path, { maxRedirects: 0 })).headers();
    const policy = headers["content-security-policy"] ?? "";
    const nonce = /script-src 'nonce-([^']+)' 'strict-dynamic'(;|$)/.exec(policy)?.[1] ?? "";
    expect(nonce.length).toBeGreaterThan(20);
    nonces.add(nonce);
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).toContain("form-action 'self'");
    expect(policy).toContain("default-src 'self'");
    expect(policy).not.toMatch(/https?:/);
    expect(headers).toMatchObject({
      "x-content-type-options": "nosniff",
      "x-frame-options": "DENY",
      "referrer-policy": "same-origin",
      "cross-origin-opener-policy": "same-origin",
    });
    expect(headers["cache-control"]).toContain("no-store");
    expect(headers).not.toHaveProperty("x-powered-by");
  }
  expect(nonces.size).toBe(2 * pages.length);
});

test("the API answers under a closed policy, and no store keeps it", async ({ request }) => {
  const headers = (await request.get("/api/health")).headers();
  expect(headers["content-security-policy"]).toBe(
    "default-src 'none'; frame-ancestors 'none'; form-action 'none'",
  );
  expect(headers["cache-control"]).toBe("no-store");
  expect(headers["x-content-type-options"]).toBe("nosniff");
});

test("a script that is written into the page is refused", async ({ page, complaints }) => {
  await page.goto("/sign-in");
  await page.evaluate(() => {
    const script = document.createElement("div");
    script.innerHTML = '<img src="data:," onerror="document.title = `taken`">';
    document.body.append(script);
  });
  await expect.poll(() => complaints.length).toBeGreaterThan(0);
  expect(complaints.splice(0).join(" ")).toContain("Content Security Policy");
  await expect(page).toHaveTitle("Sign in - Dwellbook");
});
