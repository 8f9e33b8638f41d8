import type { Page, Route } from "@playwright/test";
import { signInOf } from "#tests/e2e/support/template.ts";
import { expect, expectOnly, signIn, test } from "#tests/e2e/support/test.ts";
import { open, storyRows, toMend, type } from "#tests/e2e/support/typing.ts";

const exchange = "/record/exchanged";
const saved = "Record an exchange: saved.";
const kept = "What you typed here and did not save is here again.";

/** A draft is stored a second after the last key. */
const draftStored = (page: Page) => page.waitForResponse("**/api/trpc/draft.save");

/** The server gets what is sent and carries it out; its answer never arrives. */
async function loseAnswer(route: Route): Promise<void> {
  await route.fetch();
  await route.abort();
}

test.describe("a recording form", () => {
  test.use({ role: "nurse" });

  test("a refusal takes the focus, leads to the field, says what to mend and keeps what was typed", async ({
    page,
    newTube,
    complaints,
  }) => {
    const { tube } = await newTube();
    await open(page, tube + exchange);
    await type(page, { "Exchanged on": "soon", Size: "8", Note: "Draining well" });
    await page.getByLabel("Size").press("Enter");
    await expect(toMend(page)).toBeFocused();
    await expect(toMend(page)).toContainText('"soon" is not understood as a date. Type it like 14 nov 2026');
    await page.keyboard.press("Tab");
    await page.keyboard.press("Tab");
    await page.keyboard.press("Enter");
    const size = page.getByLabel("Size");
    await expect(size).toBeFocused();
    await expect(size).toHaveValue("8");
    await expect(size).toHaveAttribute("aria-describedby", /^field-size-beside /);
    await expect(page.locator("#field-size-beside")).toHaveText('"8" needs a unit: F, in, mm, cm or G.');
    await expect(page.getByLabel("Note")).toHaveValue("Draining well");
    await type(page, { "Exchanged on": "-30", Size: "8 f" });
    await size.press("Enter");
    await expect(toMend(page)).toBeFocused();
    await expect(toMend(page)).toContainText("This is before the tube was placed or taken over.");
    await type(page, { "Exchanged on": "-1" });
    await size.press("Enter");
    await expect(page.getByText(saved)).toBeVisible();
    await page.goto(tube);
    await expect(storyRows(page, /Exchanged/)).toHaveCount(1);
    expectOnly(complaints, "422 (Unprocessable Entity)");
  });

  test("double Enter records once", async ({ page, newTube }) => {
    const { tube } = await newTube();
    await open(page, tube + exchange);
    const sent: string[] = [];
    page.on("request", (request) => sent.push(new URL(request.url()).pathname));
    await page.getByLabel("Exchanged on").evaluate((field) => {
      const form = (field as HTMLInputElement).form;
      form?.requestSubmit();
      form?.requestSubmit();
    });
    await expect(page.getByText(saved)).toBeVisible();
    expect(sent.filter((path) => path === "/api/trpc/record.exchanged")).toHaveLength(1);
    await page.goto(tube);
    await expect(storyRows(page, /Exchanged/)).toHaveCount(1);
  });

  test("an answer that is lost is asked for again, and recorded once", async ({
    page,
    newTube,
    complaints,
  }) => {
    const { tube } = await newTube();
    await open(page, tube + exchange);
    await page.route("**/api/trpc/record.exchanged", loseAnswer, { times: 1 });
    await page.keyboard.press("Enter");
    await expect(page.getByText(saved)).toBeVisible();
    await page.goto(tube);
    await expect(storyRows(page, /Exchanged/)).toHaveCount(1);
    expectOnly(complaints, "net::ERR_FAILED");
  });

  test("when no answer comes at all that is said, and the same form opened again later records nothing twice", async ({
    page,
    newTube,
    complaints,
  }) => {
    const { tube } = await newTube();
    await open(page, tube + exchange);
    const stored = draftStored(page);
    await type(page, { Note: "Sent into a dead line" });
    await stored;
    await page.route("**/api/trpc/record.exchanged", loseAnswer);
    await page.getByLabel("Size").press("Enter");
    await expect(page.getByText(/No answer came, so it is not known whether this was entered\./)).toBeVisible(
      {
        timeout: 15_000,
      },
    );
    await page.unroute("**/api/trpc/record.exchanged");
    await open(page, tube + exchange);
    await expect(page.getByText(kept)).toBeVisible();
    await expect(page.getByLabel("Note")).toHaveValue("Sent into a dead line");
    await page.getByLabel("Size").press("Enter");
    await expect(page.getByText(saved)).toBeVisible();
    await page.goto(tube);
    await expect(storyRows(page, /Exchanged/)).toHaveCount(1);
    expectOnly(complaints, "net::ERR_FAILED");
  });

  test("a draft outlives a closed tab, for the person who typed it alone, and goes with the save", async ({
    page,
    context,
    pageOf,
    newTube,
  }) => {
    const { tube } = await newTube();
    const first = await context.newPage();
    await open(first, tube + exchange);
    const stored = draftStored(first);
    await type(first, { Size: "10 f", Note: "Changed over a stiff wire" });
    await stored;
    await first.close();
    const other = await pageOf("physician");
    await open(other, tube + exchange);
    await expect(other.getByLabel("Size")).toHaveValue("");
    await open(page, tube + exchange);
    await expect(page.getByText(kept)).toBeVisible();
    await expect(page.getByLabel("Size")).toHaveValue("10 f");
    await expect(page.getByLabel("Note")).toHaveValue("Changed over a stiff wire");
    await page.getByLabel("Size").press("Enter");
    await expect(page.getByText(saved)).toBeVisible();
    await open(page, tube + exchange);
    await expect(page.getByLabel("Size")).toHaveValue("");
    await expect(page.getByText(kept)).toHaveCount(0);
  });

  test("Escape leaves at once, with what was typed kept", async ({ page, newTube }) => {
    const { tube } = await newTube();
    await open(page, tube + exchange);
    await type(page, { Size: "10 f" });
    await page.keyboard.press("Escape");
    await page.waitForURL(tube);
    await expect(storyRows(page, /Exchanged/)).toHaveCount(0);
    await open(page, tube + exchange);
    await expect(page.getByLabel("Size")).toHaveValue("10 f");
  });

  test("undo right after the save takes it back, and the story keeps it as undone", async ({
    page,
    newTube,
  }) => {
    const { tube } = await newTube();
    await open(page, tube + exchange);
    await page.keyboard.press("Enter");
    await expect(page.getByText(saved)).toBeVisible();
    await page.keyboard.press("Tab");
    await expect(page.getByRole("button", { name: "Undo" })).toBeFocused();
    await page.keyboard.press("Enter");
    await expect(page.getByText(`Undone: ${saved}`)).toBeVisible();
    await page.goto(tube);
    const row = storyRows(page, /Exchanged/);
    await expect(row).toHaveCount(1);
    await expect(row.getByText("Undone.")).toBeVisible();
    await expect(row.locator("s").first()).toBeVisible();
    await expect(page.getByRole("region", { name: "Patient" })).toContainText("8 F");
  });

  test("what a second person saved meanwhile is shown first; what was typed stays and can be saved after", async ({
    page,
    pageOf,
    newTube,
    complaints,
  }) => {
    const { tube } = await newTube();
    await open(page, tube + exchange);
    await type(page, { Size: "10 f" });
    const other = await pageOf("physician");
    await open(other, tube + exchange);
    await type(other, { Size: "12 f" });
    await other.keyboard.press("Enter");
    await expect(other.getByText(saved)).toBeVisible();
    await page.keyboard.press("Enter");
    await expect(toMend(page)).toBeFocused();
    await expect(toMend(page)).toContainText("Somebody recorded this since you opened the form: exchanged.");
    await expect(page.getByLabel("Size")).toHaveValue("10 f");
    await expect(page.getByText(/Last recorded: .*12 F/)).toBeVisible();
    const opened = page.waitForEvent("popup");
    await toMend(page).getByRole("link", { name: "Open the record as it now stands, in a new tab." }).click();
    const record = await opened;
    await record.waitForURL(tube);
    await expect(storyRows(record, /Exchanged: 12 F/)).toHaveCount(1);
    await record.close();
    await expect(page.getByLabel("Size")).toHaveValue("10 f");
    await page.getByLabel("Size").press("Enter");
    await expect(page.getByText(saved)).toBeVisible();
    await page.goto(tube);
    await expect(storyRows(page, /Exchanged/)).toHaveCount(2);
    expectOnly(complaints, "409 (Conflict)");
  });
});

test("a session that ended mid-form asks the same person over the page, and what was typed is saved after", async ({
  page,
  context,
  clinic,
  newTube,
  complaints,
}) => {
  await signIn(page, "nurse");
  const { tube } = await newTube();
  await open(page, tube + exchange);
  await type(page, { Size: "10 f", Note: "Typed before the time ran out" });
  const held = await context.cookies();
  await page.request.post("/api/sign-out", { headers: { origin: clinic.origin } });
  await context.addCookies(held);
  await page.getByLabel("Size").press("Enter");
  const dialog = page.getByRole("dialog", { name: "Your sign-in has ended" });
  await expect(dialog).toContainText(signInOf("nurse").userName);
  await expect(page.locator("#field-size")).toHaveValue("10 f");
  await dialog.getByLabel("Password").fill(signInOf("nurse").password);
  await page.keyboard.press("Enter");
  await expect(page.getByText(saved)).toBeVisible();
  await page.goto(tube);
  await expect(storyRows(page, /Exchanged.*10 F.*Typed before the time ran out/)).toHaveCount(1);
  expectOnly(complaints, "401 (Unauthorized)");
});
