import { randomBytes } from "node:crypto";
import type { Locator, Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { findByKey } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

/** Opens the page and waits until its keys are listened to. */
async function openSizes(page: Page): Promise<void> {
  await page.goto("/sizes");
  await findByKey(page);
}

/** What leaves the page from now on. */
function requestsOf(page: Page): string[] {
  const sent: string[] = [];
  page.on("request", (request) => sent.push(`${request.method()} ${request.url()}`));
  return sent;
}

const thing = (page: Page, legend: string): Locator => page.getByRole("group", { name: legend });

async function typeInto(row: Locator, texts: Readonly<Record<string, string>>): Promise<void> {
  for (const [label, text] of Object.entries(texts)) await row.getByLabel(label, { exact: true }).fill(text);
}

/** The two lines of the whole chain. */
const summary = (page: Page): Locator =>
  page.getByRole("status").filter({ has: page.getByRole("paragraph") });

const begin = (page: Page, word: string) => page.getByRole("button", { name: word, exact: true }).click();

test("converts as one types, and asks where it is not clear", async ({ page }) => {
  await openSizes(page);
  const sent = requestsOf(page);
  const size = page.getByLabel("A size with its unit");
  const converted = page.locator("#converted");
  const typing = async (text: string) => {
    await size.fill("");
    await size.pressSequentially(text);
  };
  await typing("8 F");
  await expect(converted).toContainText("French8 F As an outside only");
  await expect(converted).toContainText("Inches0.105 in");
  await expect(converted).toContainText("Millimetres2.67 mm");
  // ISO 20696:2018, 5.5.2: rounded up to 0.1 mm, +-0.33 mm.
  await expect(converted).toContainText(
    "2.7 mm Rounded up to 0.1 mm; the tube may measure 2.37 mm to 3.03 mm",
  );
  for (const [text, says] of [
    ["8.5Fr", "Millimetres2.83 mm"],
    ["10.2 Ch", "Millimetres3.4 mm"],
    [".035 in", "Millimetres0.889 mm"],
    ["2,7 mm", "French8.1 F As an outside only"],
    ["21 G", "A gauge tells no inside"],
    ["~8 F", "about 2.67 mm"],
    ["0.35 in", "Is 0.035 in meant?"],
    ["8", '"8" needs a unit'],
    ["1,500", '"1,500" can be read two ways'],
    ["-8 F", "must be more than zero"],
    ["0 mm", "must be more than zero"],
    ["80 F", "80 F is outside what is made (0.5 to 40 F)"],
  ] as const) {
    await typing(text);
    await expect(converted).toContainText(says);
  }
  expect(sent).toEqual([]);
});

test("a wire passes the shaft and stops at the end hole: where, by how much, in which unit", async ({
  page,
}) => {
  await openSizes(page);
  const sent = requestsOf(page);
  await typeInto(thing(page, "1, innermost: wire"), { Outside: ".038 in", "Length, cm": "145" });
  await typeInto(thing(page, "2, outermost: tube"), {
    Outside: "8 f",
    "Length, cm": "25",
    "Insides, measured": "shaft .075 in, end hole .035 in",
  });
  await expect(summary(page)).toContainText(
    "Does not pass: the wire (0.038 in) in the tube: at the end hole the wire is 0.003 in (0.076 mm) too thick.",
  );
  await expect(summary(page)).toContainText(
    "Long enough: the wire reaches 120 cm out of the tip of the tube.",
  );
  await expect(page.getByRole("img", { name: "The tube and the wire, from the side" })).toBeVisible();
  await page.getByText("What this rests on").first().click();
  await expect(
    page.getByText("The end hole: inside 0.035 in (0.889 mm), confirmed; tolerance"),
  ).toBeVisible();
  expect(sent).toEqual([]);
});

test("the first of several that stops is named, and unknown insides are never read as open", async ({
  page,
}) => {
  await openSizes(page);
  await begin(page, "Wire in a stiffener in a tube in a sheath");
  await expect(summary(page)).toContainText(
    "Cannot tell: the wire in the stiffener: record the size of the wire",
  );
  await typeInto(thing(page, "1, innermost: wire"), { Outside: ".035 in" });
  await typeInto(thing(page, "2: stiffener"), { Outside: "5 f", "Takes a wire of (label)": ".038 in" });
  await expect(summary(page)).toContainText("Cannot tell: the stiffener (5 F) in the tube to come: record");
  await typeInto(thing(page, "3: tube"), { "Insides, measured": "end hole 1.2 mm" });
  // 5 F as a package states it is 1.7 mm, at its thinnest 1.37 mm (ISO 20696:2018, 5.5.2): thicker than 1.2 mm all the same.
  await expect(summary(page)).toContainText(
    "Does not pass: the stiffener (5 F) in the tube to come: at the end hole the stiffener is",
  );
  await expect(summary(page)).toContainText("Cannot tell: length of the wire and of the stiffener unknown.");
  await expect(
    page.getByText("Passes by recorded sizes: labelled for 0.038 in; the wire is 0.035 in.", { exact: true }),
  ).toBeVisible();
});

test("bad input has its sentence by its field, and no answer is given over it", async ({ page }) => {
  await openSizes(page);
  const wire = thing(page, "1, innermost: wire");
  const tube = thing(page, "2, outermost: tube");
  await typeInto(wire, { Outside: "0.35 in" });
  await typeInto(tube, { Outside: "8 f", "Insides, measured": "shaft 6 F" });
  await tube.getByLabel("Length, cm").focus();
  await expect(wire).toContainText("0.35 in is outside what is made (0.01 to 0.052 in)");
  await expect(tube).toContainText('"6 F" does not tell an inside');
  await expect(
    page.getByText("No answer yet: 1 (wire) and 2 (tube) cannot be read as it stands."),
  ).toBeVisible();
  await typeInto(wire, { Outside: ".035 in" });
  await typeInto(tube, { "Insides, measured": "shaft 2.8 mm" });
  await expect(tube).toContainText("The inside (shaft 2.8 mm) is wider than the outside (8 F): check both.");
  await tube.getByLabel("Sort").selectOption("wire");
  await expect(thing(page, "2, outermost: wire")).toContainText("A wire has no inside: move it innermost");
});

test("rows are added, moved and removed by keyboard, and what was replaced can be put back", async ({
  page,
}) => {
  await openSizes(page);
  await page.getByRole("button", { name: "Add what goes round it" }).press("Enter");
  await expect(thing(page, "3, outermost: tube").getByLabel("Sort")).toBeFocused();
  await page.keyboard.press("s");
  const added = thing(page, "3, outermost: sheath");
  await added.getByLabel("Outside", { exact: true }).fill("12 f");
  await added.getByRole("button", { name: "Move in" }).press("Enter");
  const moved = thing(page, "2: sheath");
  await expect(moved.getByRole("button", { name: "Move in" })).toBeFocused();
  await expect(moved.getByLabel("Outside", { exact: true })).toHaveValue("12 f");
  await moved.getByRole("button", { name: "Remove" }).press("Enter");
  await expect(thing(page, "2, outermost: tube").getByLabel("Outside", { exact: true })).toBeFocused();
  await page.getByRole("button", { name: "Put back what stood here" }).press("Enter");
  await expect(thing(page, "2: sheath").getByLabel("Outside", { exact: true })).toHaveValue("12 f");
});

test("a row is filled from the clinic's shelf by name", async ({ page, clinic }) => {
  const answer = await page.request.post(`${clinic.origin}/api/trpc/shelf.added`, {
    data: {
      actId: randomBytes(16).toString("base64url"),
      texts: { sort: "wire", name: "Invented wire, 180 cm", outside: ".038 in", length: "180" },
    },
    headers: { origin: clinic.origin },
  });
  expect(answer.status(), await answer.text()).toBe(200);
  await openSizes(page);
  const wire = thing(page, "1, innermost: wire");
  await wire.getByLabel("From the shelf").selectOption({ label: "Invented wire, 180 cm" });
  await expect(wire.getByLabel("Outside", { exact: true })).toHaveValue("0.038 in");
  await expect(wire.getByLabel("Length, cm")).toHaveValue("180 cm");
  await typeInto(thing(page, "2, outermost: tube"), { "Takes a wire of (label)": ".035 in" });
  await expect(summary(page)).toContainText(
    'Does not pass: the wire "Invented wire, 180 cm" (0.038 in) in the tube: labelled for 0.035 in; the wire is 0.038 in.',
  );

  const ours = page.getByRole("region", { name: "Which of ours pass?" });
  await expect(ours).toContainText("Standard 0.035, 145 cm");
  await ours.getByText("Each wire of the shelf, with the reason").click();
  const said = (name: string): Locator => ours.getByRole("listitem").filter({ hasText: name });
  await expect(said("Standard 0.035, 145 cm")).toContainText(
    "Passes by recorded sizes: labelled for 0.035 in",
  );
  await expect(said("Invented wire, 180 cm")).toContainText("Does not pass: labelled for 0.035 in");
});

test("every role finds the page from the head; its rows say whose they are", async ({ pageOf }) => {
  for (const role of ["caller", "physician", "lead"] as const) {
    const page = await pageOf(role);
    await page.goto("/");
    await page
      .getByRole("navigation", { name: "Pages" })
      .getByRole("link", { name: "Clinic's books" })
      .click();
    await page.getByRole("main").getByRole("link", { name: "Sizes" }).click();
    await expect(page.getByRole("heading", { name: "Rows used" })).toContainText("EXAMPLE");
    await expect(page.getByText("Scientific Reports 2025, s41598-024-71935-w")).toBeVisible();
  }
});
