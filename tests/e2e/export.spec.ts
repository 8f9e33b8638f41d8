import { readFileSync } from "node:fs";
import { expect, test } from "#tests/e2e/support/test.ts";

test.describe("the lead", () => {
  test.use({ role: "lead" });

  test("takes the whole record and a table away from the page Export, and that is written down", async ({
    page,
  }) => {
    await page.goto("/staff");
    await page.getByRole("link", { name: "Export" }).click();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("Which file is needed?");

    const record = page.waitForEvent("download");
    await page.getByRole("link", { name: "record.json" }).click();
    const whole = await record;
    expect(whole.suggestedFilename()).toBe("record.json");
    const { format, rows, tables } = JSON.parse(readFileSync(await whole.path(), "utf8"));
    expect(format).toBe("dwellbook record");
    expect(tables.patients.length).toBeGreaterThan(10);
    expect(tables.events).toHaveLength(rows.events);
    // Its own taking is the last thing that it holds.
    expect(tables.reads.at(-1)).toMatchObject({ subject_kind: "export", subject_id: "record.json" });

    const table = page.waitForEvent("download");
    await page.getByRole("link", { name: "patients.csv" }).click();
    const patients = readFileSync(await (await table).path(), "utf8");
    expect(patients).toMatch(/^\u{feff}family name,given name,birth date,number,/u);
    expect(patients).toContain("\r\nBrackenfold,Ottoline,1951-04-03,Quillmere 004711,");

    await page.goto("/audit");
    await expect(page.getByText("export: patients.csv")).toBeVisible();
    await expect(page.getByText("export: record.json")).toBeVisible();
  });

  test("gets a file that no store keeps, under the name that it has", async ({ page, request }) => {
    await page.goto("/export");
    const headers = { "sec-fetch-site": "same-origin" };
    const answer = await request.get("/api/export/steps.csv", { headers });
    expect(answer.status()).toBe(200);
    expect(answer.headers()).toMatchObject({
      "content-disposition": 'attachment; filename="steps.csv"',
      "content-type": "text/csv; charset=utf-8; header=present",
      "cache-control": "no-store",
      "x-content-type-options": "nosniff",
    });
    for (const other of ["clinic.sqlite", "..%2Frecord.json", "RECORD.JSON"])
      expect((await request.get(`/api/export/${other}`, { headers })).status()).toBe(404);
  });

  test("gets nothing through a link of another site, nor by an address that is typed", async ({
    request,
  }) => {
    for (const site of ["cross-site", "same-site", "none"]) {
      const answer = await request.get("/api/export/record.json", { headers: { "sec-fetch-site": site } });
      expect(answer.status()).toBe(403);
    }
  });
});

test.describe("the nurse", () => {
  test.use({ role: "nurse" });

  test("is offered no export, and gets none", async ({ page, request, complaints }) => {
    await page.goto("/staff");
    await expect(page.getByRole("link", { name: "Export" })).toHaveCount(0);
    await page.goto("/export");
    await expect(page.getByText("Your role may not do this.")).toBeVisible();
    await expect(page.getByRole("link", { name: "record.json" })).toHaveCount(0);
    const answer = await request.get("/api/export/record.json", {
      headers: { "sec-fetch-site": "same-origin" },
    });
    expect(answer.status()).toBe(403);
    expect(await answer.json()).toEqual({
      sentence: "Your role may not do this. Ask the lead of the clinic who does.",
    });
    expect(complaints).toEqual([]);
  });
});

test("nobody gets an export without signing in", async ({ page, request }) => {
  const answer = await request.get("/api/export/record.json", {
    headers: { "sec-fetch-site": "same-origin" },
  });
  expect(answer.status()).toBe(401);
  await page.goto("/export");
  await expect(page).toHaveURL(/\/sign-in\?next=%2Fexport$/);
});
