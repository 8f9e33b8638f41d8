import type { Page } from "@playwright/test";
import { FINDER_ID } from "#app/ui/finder-id.ts";
import { expectReflow } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { expectOnly } from "#tests/e2e/support/test.ts";
import { open, toMend, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

/** Of a tube that was placed twenty days ago: what is typed where, and the sentence that says what to mend. */
const refused = [
  [
    "a date in the future",
    "exchanged",
    "Exchanged on",
    "+3",
    /in the future\. Type the day on which it happened\./,
  ],
  [
    "an exchange before placement",
    "exchanged",
    "Exchanged on",
    "-40",
    /before the tube was placed .* Check the date/,
  ],
  [
    "800 F",
    "exchanged",
    "Size",
    "800 F",
    /800 F is outside what is made \(.+\)\. Check the number and the unit\./,
  ],
  ["a size with a comma and no unit", "exchanged", "Size", "8,5", /"8,5" needs a unit: F, in, mm, cm or G\./],
  [
    "a volume with a comma and no unit",
    "reading",
    "Drained, mL",
    "8,5",
    /"8,5" needs a unit or a point: 8,5 mL or 8\.5\./,
  ],
  [
    "a wire without its unit",
    "exchange-planned",
    "Wire",
    "0.035",
    /"0\.035" needs a unit: F, in, mm, cm or G\./,
  ],
  [
    "a negative flush",
    "reading",
    "Flush given, mL",
    "-10",
    /"-10" is less than zero\. Type what was measured or put in\./,
  ],
] as const;

for (const [what, form, field, typed, sentence] of refused) {
  test(`${what} is refused in a sentence that says what to mend; it stays as typed and nothing is written`, async ({
    page,
    newTube,
    complaints,
  }) => {
    const { tube } = await newTube();
    await open(page, `${tube}/record/${form}`);
    await type(page, { [field]: typed });
    await page.keyboard.press("Enter");
    await expect(toMend(page)).toBeFocused();
    await expect(toMend(page)).toContainText(sentence);
    await expect(page.getByLabel(field, { exact: true })).toHaveValue(typed);
    await page.goto(tube);
    await expect(page.getByRole("table", { name: /^Story/ }).locator("tbody tr")).toHaveCount(1);
    await expect(page.getByText("No reading yet.")).toBeVisible();
    expectOnly(complaints, "422 (Unprocessable Entity)");
  });
}

const understood = [
  ["exchanged", "Size", "8,5 f", "8.5 F"],
  ["reading", "Drained, mL", "8,5 mL", "8.5 mL"],
  ["exchange-planned", "Wire", ",035 in", "0.035 in"],
] as const;

for (const [form, field, typed, echo] of understood) {
  test(`${field}: "${typed}" with its unit is understood as ${echo}`, async ({ page, newTube }) => {
    const { tube } = await newTube();
    await open(page, `${tube}/record/${form}`);
    await type(page, { [field]: typed });
    const control = page.getByLabel(field, { exact: true });
    await expect(page.locator(`#${await control.getAttribute("id")}-beside`)).toContainText(echo);
  });
}

test("an address with an unknown id or form is answered with 404 and a plain page", async ({
  page,
  newTube,
  complaints,
}) => {
  const { patient, tube } = await newTube();
  const addresses = [
    "/patients/nobody",
    "/patients/nobody/identity",
    "/patients/nobody/record/placed",
    `${patient}/record/juggled`,
    `${patient}/correct/nothing`,
    `${patient}/undo/nothing`,
    `${patient}/void/nothing`,
    "/tubes/none",
    "/tubes/none/output",
    "/tubes/none/record/exchanged",
    "/tubes/none/record/reading",
    `${tube}/record/juggled`,
    `${tube}/output/nothing/correct`,
    `${tube}/output/nothing/void`,
    "/staff/nobody/close",
    "/today/nothing",
    "/import/undo/nothing",
  ];
  const answers = await Promise.all(
    addresses.map(async (address) => [address, (await page.request.get(address)).status()]),
  );
  expect(answers).toEqual(addresses.map((address) => [address, 404]));
  await page.goto("/patients/nobody");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("There is no such page");
  await expect(page.getByText("Check the address, or look the patient up by name or number.")).toBeVisible();
  expectOnly(complaints, "404 (Not Found)");
});

test("a place in the list that no list ever gave leads to its beginning", async ({ page }) => {
  await page.goto("/exchanges?after=<script>");
  await expect(page.getByRole("table").getByRole("row").nth(1)).toBeVisible();
});

test("leading zeros of a record number are kept: shown, found, and another number than without them", async ({
  page,
  newTube,
}) => {
  const { patient } = await newTube({ patient: { number: "000042" } });
  const other = await newTube({ patient: { number: "42" } });
  await page.goto(patient);
  await expect(
    page.getByRole("region", { name: "Patient" }).getByText("000042", { exact: true }),
  ).toBeVisible();
  await page.goto(other.patient);
  await expect(page.getByRole("region", { name: "Patient" }).getByText("42", { exact: true })).toBeVisible();
  await page.locator(`#${FINDER_ID}`).fill("000042");
  await page.keyboard.press("Enter");
  await page.waitForURL(patient);
});

test("a name of 500 characters is refused with the limit, and stays as typed", async ({ page }) => {
  const long = "Quimble".repeat(72).slice(0, 500);
  await open(page, "/patients/new");
  await type(page, { "Family name": long, "Record number": "000043" });
  await page.keyboard.press("Enter");
  await expect(toMend(page)).toBeFocused();
  await expect(toMend(page)).toContainText("This is longer than 120 characters. Shorten it.");
  await expect(page.getByLabel("Family name")).toHaveValue(long);
});

/** Text of a page that stands outside what keeps its direction to itself. */
const strayText = (page: Page, text: string): Promise<string[]> =>
  page.evaluate((wanted) => {
    const stray: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const around = node.parentElement;
      if (node.textContent?.includes(wanted) && around?.closest("bdi, [dir=auto], script") === null)
        stray.push(around.outerHTML);
    }
    return stray;
  }, text);

const strange = {
  "a name of 120 characters": { familyName: "Quimbletonia".repeat(10), givenName: "Ada" },
  "right-to-left text": { familyName: "\u05D0\u05D1\u05D2\u05D3", givenName: "\u05D4\u05D5" },
  "text that turns its direction": { familyName: "Quim\u202Ebleton", givenName: "Ada" },
  "a script tag": { familyName: "<script>ran = 1</script>", givenName: '<img src="x" onerror="ran = 1">' },
} as const;

test(`${Object.keys(strange).join(", ")} in a name and an entry: shown as text, apart from the text round it`, async ({
  page,
  pageOf,
  newTube,
}) => {
  test.slow();
  const lead = await pageOf("lead");
  const shows = async (shown: Page, address: string, { familyName }: { readonly familyName: string }) => {
    if (new URL(shown.url()).pathname !== address) await shown.goto(address);
    await expect(shown.locator("bdi, [dir=auto]").filter({ hasText: familyName }).first()).toBeVisible();
    expect(await strayText(shown, familyName), address).toEqual([]);
    expect(await shown.evaluate(() => Reflect.has(globalThis, "ran")), address).toBe(false);
  };
  const names = Object.values(strange);
  for (const name of names) {
    const { patient, tube } = await newTube({
      patient: name,
      tube: { when: "-100", from: `Dr ${name.familyName}` },
    });
    for (const address of [patient, tube, `${tube}/record/exchanged`]) await shows(page, address, name);
  }
  for (const name of names) await shows(lead, "/audit", name);
  for (const name of names) await shows(lead, "/exchanges", name);
  for (const name of names) await shows(lead, "/", name);
  for (const address of ["/", "/exchanges"]) {
    await lead.goto(address);
    await expectReflow(lead);
  }
});
