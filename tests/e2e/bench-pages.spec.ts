import { expect, test } from "#tests/e2e/support/test.ts";

for (const path of ["/bench/constant-exchanges", "/bench/empty"]) {
  test(`${path}, a page to measure against, is no page of a clinic's server`, async ({ request }) => {
    const answer = await request.get(path);
    expect(answer.status()).toBe(404);
    const text = await answer.text();
    expect(text).toContain("There is no such page");
    expect(text).not.toMatch(/Constantine-Row|Nothing\./);
  });
}
