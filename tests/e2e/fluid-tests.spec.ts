import { expectAccessible } from "#tests/e2e/support/accessibility.ts";
import { expect, test } from "#tests/e2e/support/kept-page.ts";
import { open, save, saved, storyRows, toMend, type } from "#tests/e2e/support/typing.ts";

test.use({ role: "nurse" });

const PHONE = { width: 390, height: 844 };

test("a nurse records what the laboratory found; a physician reads each ratio beside its published definition", async ({
  page,
  newTube,
  pageOf,
}) => {
  const { tube } = await newTube({ tube: { kind: "abscess drain", cavity: "left subphrenic" } });

  await test.step("serum is asked once there is a value in the fluid, and what is to mend stands beside its field", async () => {
    await open(page, `${tube}/record/fluid-tested`);
    await expect(page.getByLabel("Bilirubin in serum, umol/L")).toHaveCount(0);
    await type(page, { "Bilirubin in the fluid, umol/L": "5 mg" });
    await type(page, { "Bilirubin in serum, umol/L": "25.15" });
    await save(page, "Record fluid tests");
    await expect(toMend(page)).toContainText('"5 mg" is not understood here. Type a number in umol/L');
    await expect(page.getByLabel("Bilirubin in serum, umol/L")).toHaveValue("25.15");
  });

  await test.step("a value in another unit is converted as it is typed, and saved", async () => {
    await type(page, { "Bilirubin in the fluid, umol/L": "5 mg/dL", "Amylase in the fluid, U/L": "4200" });
    await expect(page.getByText("85.52 umol/L, typed 5 mg/dL")).toBeVisible();
    await save(page, "Record fluid tests");
    await saved(page);
  });

  await test.step("the physician reads it on the tube's page, at a desk and on a telephone", async () => {
    const desk = await pageOf("physician");
    await desk.goto(tube);
    const table = desk.getByRole("table", { name: /^Fluid tests/ });
    const bilirubin = table.getByRole("row", { name: /bilirubin/ });
    for (const words of [
      "85.52 umol/L, typed 5 mg/dL",
      "25.15 umol/L",
      "3.4 times serum",
      "the published definition of a bile leak (ISGLS, Koch et al., Surgery 2011;149:680) is 3 times or more on or after day 3",
    ])
      await expect(bilirubin).toContainText(words);
    await expect(table.getByRole("row", { name: /amylase/ })).toContainText(
      "cannot tell: the upper limit of the laboratory's serum range is not recorded",
    );
    await expect(storyRows(desk, /Fluid tested: amylase 4200 U\/L, bilirubin 85.52 umol\/L/)).toHaveCount(1);
    await expectAccessible(desk);
    await desk.setViewportSize(PHONE);
    await expect(bilirubin).toContainText("3.4 times serum");
    expect(await desk.evaluate(() => document.documentElement.scrollWidth)).toBe(PHONE.width);
  });
});
