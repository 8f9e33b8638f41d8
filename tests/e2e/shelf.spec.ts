import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { open, save, saved, toMend, type } from "#tests/e2e/support/typing.ts";

test.describe.configure({ mode: "serial" });
test.use({ role: "nurse" });

test("a type is added by its form, which keeps what was typed while it is mended; it is changed, taken off and put back", async ({
  page,
}) => {
  await page.goto("/shelf");
  await expect(page.getByRole("link", { name: "Add a type" })).toHaveAttribute("href", "/shelf/new");
  await open(page, "/shelf/new");
  await page.getByLabel("Sort", { exact: true }).selectOption("tube");
  await type(page, {
    Name: "Trial drain",
    Outside: "80 f",
    "Insides, measured": "shaft 1.9 mm",
    "Length, cm": "25",
  });
  await save(page, "Add the type");
  await expect(toMend(page)).toContainText(
    "80 F is outside what is made (3 to 40 F). Check the number and the unit.",
  );
  await expect(page.getByLabel("Name", { exact: true })).toHaveValue("Trial drain");
  await expect(page.getByLabel("Insides, measured")).toHaveValue("shaft 1.9 mm");

  await type(page, { Outside: "5 f" });
  await save(page, "Add the type");
  await expect(toMend(page)).toContainText(
    "The inside (shaft 1.9 mm) is wider than the outside (5 F): check both.",
  );
  await type(page, { Outside: "8 f" });
  await save(page, "Add the type");
  await expect(page.getByText("The type is on the shelf.")).toBeVisible();

  await page.getByRole("link", { name: "To the shelf" }).click();
  const row = page.getByRole("row", { name: /Trial drain/ });
  await expect(row).toContainText("8 F");
  await row.getByRole("link", { name: "Trial drain" }).click();
  await expect(page.getByLabel("Outside", { exact: true })).toHaveValue("8 F");
  await page.getByRole("button", { name: "Take it off the shelf" }).click();
  await expect(page.getByText("It is off the shelf.")).toBeVisible();
  await page.goto("/shelf");
  await expect(page.getByRole("table", { name: /On the shelf/ })).not.toContainText("Trial drain");
  await page.getByText("Taken off the shelf:").click();
  await page.getByRole("link", { name: "Trial drain" }).click();
  await page.getByRole("button", { name: "Put it back on the shelf" }).click();
  await expect(page.getByText("It is on the shelf again.")).toBeVisible();
});

const pasted = [
  "Name\tSort\tSize\tTakes wire\tPrice",
  "Pasted drain\tdrain\t9 F\t.038 in\t12",
  "Pasted wire\tguidewire\t.35 in\t\t3",
].join("\n");

test("a pasted sheet is shown row by row, brought in, and changes what is there only where that is said", async ({
  page,
}) => {
  await page.goto("/shelf/sheet");
  const read = page.getByRole("button", { name: "Read the sheet" });
  await expect(read).toBeEnabled();
  await read.click();
  await expect(toMend(page)).toContainText("Choose a file, or paste the rows with their headings.");
  await page.getByLabel("Or paste rows").fill(pasted);
  await read.click();
  await expect(page.getByText("2 rows read. Nothing is read from: Price.")).toBeVisible();
  const aside = page.getByRole("table", { name: /Set aside/ });
  await expect(aside).toContainText(".35 in is outside what is made (0.01 to 0.052 in).");
  await expect(page.getByRole("table", { name: /New on the shelf/ })).toContainText("Pasted drain");
  await page.getByRole("button", { name: "Bring in 1 type" }).click();
  await expect(page.getByText("1 type added, 1 set aside.")).toBeVisible();

  await page.getByLabel("Or paste rows").fill(pasted.replace("9 F", "10 F").replace(".35", ".035"));
  await read.click();
  const changes = page.getByRole("table", { name: /said otherwise/ });
  await expect(changes).toContainText("Outside: 9 F becomes 10 F");
  await page.getByRole("button", { name: "Bring in 1 type" }).click();
  await expect(page.getByText("1 type added.")).toBeVisible();
  await read.click();
  await expect(page.getByRole("button", { name: "Bring in 0 types" })).toBeDisabled();
  await page.getByLabel("Change the 1 type that the shelf has under the same name").check();
  await page.getByRole("button", { name: "Bring in 1 type" }).click();
  await expect(page.getByText("0 types added, 1 changed.")).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByText("What was new is off the shelf again; all else is as before.")).toBeVisible();
  await page.goto("/shelf");
  await expect(page.getByRole("row", { name: /Pasted drain/ })).toContainText("9 F");
});

test("a tube named by its shelf name has its sizes and insides without asking", async ({ page, newTube }) => {
  const { tube } = await newTube();
  await open(page, `${tube}/record/facts-noted`);
  await type(page, { "From the shelf": "drain 12, t" });
  await expect(page.getByText("Drain 12, tapered: 12 F")).toBeVisible();
  await save(page, "Note facts of the tube");
  await saved(page);
  await page.goto(tube);
  await expect(page.getByText("end hole 0.914 mm (0.036 in)").first()).toBeVisible();
});

test.describe("a physician", () => {
  test.use({ role: "physician" });

  test("reads the shelf and changes nothing on it", async ({ page }) => {
    await page.goto("/");
    await page.getByRole("link", { name: "Shelf", exact: true }).click();
    await expect(page.getByRole("row", { name: /Drain 12, tapered/ })).toContainText("end hole");
    await expect(page.getByRole("link", { name: "Add a type" })).toHaveCount(0);
    await page.goto("/shelf/new");
    await expect(page.getByRole("button", { name: "Add the type" })).toHaveCount(0);
  });
});
