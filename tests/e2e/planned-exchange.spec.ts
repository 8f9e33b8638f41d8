import type { Page } from "@playwright/test";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { open, save, toMend, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

/** Ten days old, 8 F, a shaft that a 0.038 in wire passes and an end hole that it does not. */
const young = {
  when: "-10",
  takes: "",
  bores: "shaft 1.9 mm, end hole .035 in",
  retention: "locking loop",
  fullLength: "25",
  externalLength: "5",
};

const sayings = (page: Page) => page.getByRole("status");

test("an upsizing 8 F to 12 F in a ten-day-old tract with a wire that stops at the end hole is read in one screen, and printed", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube({ tube: young });
  await open(page, `${tube}/record/exchange-planned`);
  await type(page, {
    "Planned for": "+0",
    Wire: ".038 in",
    "Length of the wire, cm": "80",
    "Tube to come": "12 f",
    "The tube to come takes a wire of (label)": ".038 in",
  });
  const short = sayings(page).filter({ hasText: "Tube in place" });
  for (const line of [
    "Tube in place: Does not pass: at the end hole the wire is 0.003 in (0.076 mm) too thick.",
    "Step of 4 F, from 8 F to 12 F: over the usual 2 F",
    "Immature tract: tract at least 10 days old",
    "If access is lost this becomes a new puncture.",
  ])
    await expect(short).toContainText(line);
  await short.scrollIntoViewIfNeeded();
  const box = await short.boundingBox();
  expect(box === null ? 0 : box.y + box.height).toBeLessThanOrEqual(800);

  await test.step("it warns and goes on: a reason is asked by the row, one key", async () => {
    await save(page, "Plan the exchange");
    await expect(toMend(page)).toContainText("The clinic's row asks why this goes on");
    await expect(page.getByLabel("Wire", { exact: true })).toHaveValue(".038 in");
    await type(page, { "Reason to go on all the same": "2", "Who agreed the plan": "Dr. Petra Invented" });
    await save(page, "Plan the exchange");
    await expect(page.getByText("Plan the exchange: saved.")).toBeVisible();
  });

  await test.step("the table-top list prints what is planned and what the facts say", async () => {
    await page.goto(`${tube}/table-top`);
    await page.emulateMedia({ media: "print" });
    await expect(page.getByText("Wire, 0.038 in, 80 cm")).toBeVisible();
    await expect(page.getByText(/Tube to come \(nephrostomy\), 12 F/)).toBeVisible();
    await expect(
      page.getByText("Must come out with it: the loop, straight, and all of the string.").first(),
    ).toBeVisible();
    await page.emulateMedia({ media: "screen" });
  });

  await test.step("a fact that changes is said of the plan", async () => {
    await open(page, `${tube}/record/facts-noted`);
    await type(page, { Size: "8.5 f" });
    await save(page, "Note facts of the tube");
    await expect(page.getByText("Note facts of the tube: saved.")).toBeVisible();
    await page.goto(tube);
    await expect(page.getByText(/This plan was checked on other facts.*Changed since: size/)).toBeVisible();
  });
});

test("what nobody knows is told as cannot tell everywhere, and named", async ({ page, newTube }) => {
  const { tube } = await newTube({ tube: { size: "?", takes: "" } });
  await open(page, `${tube}/record/exchange-planned`);
  await type(page, { Wire: ".035 in" });
  const short = sayings(page).filter({ hasText: "Tube in place" });
  await expect(short).toContainText(
    "Tube in place: Cannot tell: record what wire the tube takes, or its bores.",
  );
  await expect(short).toContainText(
    "Tube to come: Cannot tell: record what wire the tube takes, or its bores.",
  );
  await expect(short).toContainText("Length: Cannot tell: record the length of the wire");
  await expect(short).toContainText(
    "Cannot tell: record the size of the tube in place and size of the tube to come.",
  );
});

test("each wire of the shelf says which thing decides, the stiffener too, and of size alone", async ({
  page,
  newTube,
}) => {
  const { tube } = await newTube({ tube: { takes: ".038 in" } });
  await open(page, `${tube}/record/exchange-planned`);
  await type(page, {
    Wire: ".035 in",
    "Tube to come": "8 f",
    "The tube to come takes a wire of (label)": ".038 in",
    Stiffener: "5 f",
  });
  await page.getByText("Each wire of the shelf, with the reason").click();
  const wires = page.getByRole("listitem").filter({ hasText: "Standard 0.035, 145 cm" });
  await expect(wires).toContainText("Cannot tell: in the stiffener");
  await expect(sayings(page).filter({ hasText: "Tube in place" })).toContainText(
    "No wire on the shelf is known to pass both tubes by size.",
  );
});

test("bad sizes get a sentence beside their field", async ({ page, newTube }) => {
  const { tube } = await newTube();
  await open(page, `${tube}/record/exchange-planned`);
  await type(page, { Wire: "0.35 in", "Tube to come": "80 F", "Length of the wire, cm": "-5" });
  await save(page, "Plan the exchange");
  await expect(toMend(page)).toContainText("3 things to mend");
  await expect(page.getByLabel("Tube to come", { exact: true })).toHaveValue("80 F");
});
