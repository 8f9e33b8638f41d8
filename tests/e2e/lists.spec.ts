import { readFileSync } from "node:fs";
import type { Locator, Page } from "@playwright/test";
import { expectAccessible, expectReflow } from "#tests/e2e/support/accessibility.ts";
import { send } from "#tests/e2e/support/enter-tube.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { expectOnly } from "#tests/e2e/support/test.ts";

test.use({ role: "nurse" });

const row = (page: Page, name: string): Locator => page.getByRole("row", { name: new RegExp(name) });
const caption = (page: Page, said: string | RegExp): Locator => page.locator("caption", { hasText: said });

/** A press before the page's script runs is lost, and nothing shows when it does: buttons wait for it. */
const press = async (button: Locator): Promise<void> => {
  await expect(button).toBeEnabled();
  await button.press("Enter");
};

/** Names in the order of the page, those of these tests alone. */
const order = async (page: Page): Promise<readonly string[]> =>
  (await page.getByRole("row").allInnerTexts()).flatMap((text) => /Listed-(\w+)/.exec(text)?.[1] ?? []);

test("the lists are counted, each leads to its lines, and a visit stands in the line of its tube", async ({
  page,
  newTube,
  request,
  clinic,
}) => {
  const { patient, tube } = await newTube({
    patient: { familyName: "Listed-Visit" },
    tube: { kind: "retrograde", side: "left", when: "-40" },
  });
  await send({ request, origin: clinic.origin }, "visit.booked", {
    patientId: patient.split("/").at(-1),
    tubes: [{ tubeId: tube.split("/").at(-1), act: "exchange" }],
    urgent: false,
    lastSeen: 99,
    texts: { on: "+10", at: "10:00", elsewhere: "Far Dale General" },
  });
  await page.goto("/exchanges?kind=retrograde");
  await expect(row(page, "Listed-Visit")).toContainText(/booked elsewhere .*, 10:00, Far Dale General/);
  await page.getByRole("link", { name: "Lists by what is to be done" }).click();
  await page.waitForURL(/\/lists\?kind=retrograde/);
  const unconfirmed = page.getByRole("row", { name: /^Unconfirmed/ });
  await expect(unconfirmed.getByRole("cell").first()).toHaveText("1");
  await expectAccessible(page);
  await unconfirmed.getByRole("link").click();
  await page.waitForURL(/\/lists\/unconfirmed\?kind=retrograde/);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Which visits has nobody confirmed?");
  await expect(row(page, "Listed-Visit")).toHaveCount(1);
  await expectAccessible(page);
  await expectReflow(page);

  await page.goto("/exchanges?kind=retrograde&visit=without");
  await expect(row(page, "Listed-Visit")).toHaveCount(0);
  await page.goto("/exchanges?kind=retrograde&visit=with");
  await expect(row(page, "Listed-Visit")).toHaveCount(1);
});

test("a filter is saved under a name, stands as a link, refuses the name for another, and is dropped", async ({
  page,
  complaints,
}) => {
  await page.goto("/lists/overdue?kind=nephrostomy&side=left");
  const save = async (name: string): Promise<void> => {
    const button = page.getByRole("button", { name: "Save the filter" });
    await page.getByText("Save this filter").click();
    await expect(button).toBeEnabled();
    await page.getByLabel("Name", { exact: true }).fill(name);
    await page.keyboard.press("Enter");
  };
  const saved = page.getByRole("list", { name: "Your saved filters" });
  await save("Left kidneys");
  await expect(saved.getByRole("link", { name: "Left kidneys" })).toBeVisible();

  await page.goto("/lists/overdue?side=right");
  await save("left KIDNEYS");
  await expect(
    page.getByText('You have a filter "Left kidneys" already, of the list Overdue.', { exact: false }),
  ).toBeVisible();
  await expect(page.getByLabel("Name", { exact: true })).toHaveValue("left KIDNEYS");
  expectOnly(complaints, "422");

  await saved.getByRole("link", { name: "Left kidneys" }).click();
  await page.waitForURL(/\/lists\/overdue\?kind=nephrostomy&side=left/);
  await page.goto("/lists");
  await press(page.getByRole("button", { name: "Drop Left kidneys, of Overdue" }));
  await expect(page.getByText("Left kidneys")).toHaveCount(0);
});

test("a line is put first, moved and let go by keyboard; only whoever did it sees it so", async ({
  page,
  newTube,
  lend,
}) => {
  for (const [index, name] of ["Ann", "Bea", "Cyn"].entries())
    await newTube({
      patient: { familyName: `Listed-${name}` },
      tube: { kind: "nephroureteral", side: "left", when: String(-600 + index) },
    });
  const path = "/lists/past-latest?kind=nephroureteral";
  await page.goto(path);
  expect(await order(page)).toEqual(["Ann", "Bea", "Cyn"]);
  await press(row(page, "Listed-Cyn").getByRole("button", { name: /^First/ }));
  await expect(caption(page, "In your order")).toBeVisible();
  expect(await order(page)).toEqual(["Cyn", "Ann", "Bea"]);
  await press(row(page, "Listed-Bea").getByRole("button", { name: /^First/ }));
  await expect.poll(() => order(page)).toEqual(["Bea", "Cyn", "Ann"]);
  // The keyboard is where the line now stands.
  await expect(row(page, "Listed-Bea").getByRole("button").first()).toBeFocused();
  await press(row(page, "Listed-Bea").getByRole("button", { name: /^Down/ }));
  await expect.poll(() => order(page)).toEqual(["Cyn", "Bea", "Ann"]);
  await expect(page.getByText("Only you see it so.", { exact: false })).toBeVisible();
  await expectAccessible(page);

  const other = await lend("physician");
  await other.goto(path);
  expect(await order(other)).toEqual(["Ann", "Bea", "Cyn"]);

  await press(row(page, "Listed-Cyn").getByRole("button", { name: /^Back/ }));
  await expect.poll(() => order(page)).toEqual(["Bea", "Ann", "Cyn"]);
  await press(page.getByRole("button", { name: "Back to the list's own order" }));
  await expect.poll(() => order(page)).toEqual(["Ann", "Bea", "Cyn"]);
  await expect(caption(page, "In your order")).toHaveCount(0);
});

test("a list is taken away as a file under its filter, and a filter that is not understood gives none", async ({
  page,
  request,
  newTube,
}) => {
  await newTube({
    patient: { familyName: "Listed-File" },
    tube: { kind: "suprapubic", side: "not sided", when: "-500" },
  });
  await page.goto("/lists/past-latest?kind=suprapubic");
  const download = page.waitForEvent("download");
  await page.getByRole("link", { name: "This list as a file (CSV)" }).click();
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^past-latest-\d{4}-\d\d-\d\d\.csv$/);
  const text = readFileSync(await file.path(), "utf8");
  expect(text).toContain("Listed-File,Ada,1959-05-04,");
  expect(text.trimEnd().split("\r\n").length).toBeLessThan(10);
  const headers = { "sec-fetch-site": "same-origin" };
  const refused = await request.get("/api/lists/past-latest?kind=hose", { headers });
  expect(refused.status()).toBe(422);
  expect((await refused.json()).sentence).toContain("hose");
  expect((await request.get("/api/lists/nothing", { headers })).status()).toBe(404);
});

test.describe("a caller", () => {
  test.use({ role: "caller" });

  test("sees every list and takes none away as a file", async ({ page, request }) => {
    await page.goto("/lists/past-latest");
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("What is past its latest date?");
    await expect(page.getByRole("link", { name: "This list as a file (CSV)" })).toHaveCount(0);
    const headers = { "sec-fetch-site": "same-origin" };
    expect((await request.get("/api/lists/past-latest", { headers })).status()).toBe(403);
  });
});
