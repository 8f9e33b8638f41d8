import { signInOf } from "#tests/e2e/support/template.ts";
import { expect, signIn, test } from "#tests/e2e/support/test.ts";

const wrong = "User name and password do not fit together. Check both and type them again.";

test("a page that needs a sign-in leads there and back", async ({ page }) => {
  const { userName, password } = signInOf("nurse");
  await page.goto("/keys");
  await expect(page).toHaveURL(/\/sign-in\?next=%2Fkeys$/);
  await page.getByLabel("User name").fill(userName);
  await page.getByLabel("Password").fill(password);
  await page.keyboard.press("Enter");
  await expect(page).toHaveURL(/\/keys$/);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Which keys do what?");
});

test("a wrong password and an unknown name are told alike, and the name that was typed stays", async ({
  page,
}) => {
  for (const userName of [signInOf("caller").userName, "nobody-of-that-name"]) {
    await page.goto("/sign-in");
    await page.getByLabel("User name").fill(userName);
    await page.getByLabel("Password").fill("not the password at all");
    await page.getByRole("button", { name: "Sign in" }).click();
    const summary = page.getByRole("region", { name: "One thing to mend" });
    await expect(summary).toContainText(wrong);
    await expect(summary).toBeFocused();
    await expect(page.getByLabel("User name")).toHaveValue(userName);
    await expect(page.getByLabel("Password")).toHaveValue("");
    await expect(page).toHaveURL(/\/sign-in\?next=%2F$/);
  }
});

test("after five wrong sign-ins the time of the next try is told, and the right password waits too", async ({
  page,
}) => {
  const { userName, password } = signInOf("lead");
  const attempt = async (typed: string): Promise<void> => {
    await page.goto("/sign-in");
    await page.getByLabel("User name").fill(userName);
    await page.getByLabel("Password").fill(typed);
    await page.getByRole("button", { name: "Sign in" }).click();
  };
  for (let count = 0; count < 5; count += 1) {
    await attempt("not the password at all");
    await expect(page.getByRole("region", { name: "One thing to mend" })).toContainText(wrong);
  }
  await attempt(password);
  await expect(page.getByText(/Too many wrong sign-ins\. Try again after \d{2}:\d{2}\./)).toBeVisible();
});

test("signing out ends the session in the table, not only the cookie", async ({ page, context }) => {
  await signIn(page, "nurse");
  const held = await context.cookies();
  await page.getByRole("button", { name: "Sign out" }).click();
  await expect(page).toHaveURL(/\/sign-in$/);
  await context.addCookies(held);
  await page.goto("/keys");
  await expect(page).toHaveURL(/\/sign-in\?next=%2Fkeys$/);
});

test("the cookie is for this host, for no script, and not for other sites", async ({ page, context }) => {
  await signIn(page, "nurse");
  const cookie = (await context.cookies()).find(({ name }) => name.startsWith("__Host-"));
  expect(cookie).toMatchObject({ httpOnly: true, secure: true, path: "/", expires: -1 });
});

test.describe("without script", () => {
  test.use({ javaScriptEnabled: false });

  test("sign-in and sign-out work", async ({ page }) => {
    await signIn(page, "physician");
    await page.getByRole("button", { name: "Sign out" }).click();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("Who is signing in?");
  });
});

test("over plain http from another machine the page says that https is needed, and asks for no password", async ({
  clinic,
  request,
}) => {
  const page = await request.get(`${clinic.origin}/sign-in`, { headers: { host: "tubes.clinic.example" } });
  const html = await page.text();
  expect(html).toContain("This address needs https");
  expect(html).not.toContain('type="password"');
});

test("a sign-in leads to a page of this site only", async ({ request, baseURL }) => {
  const { userName, password } = signInOf("nurse");
  const elsewhere = [
    "//elsewhere.example/x",
    "/\\\\elsewhere.example",
    "https://elsewhere.example",
    "javascript:alert(1)",
    "",
  ];
  for (const [next, location] of [["/keys?a=1", "/keys?a=1"], ...elsewhere.map((path) => [path, "/"])]) {
    const answer = await request.post("/api/sign-in", {
      form: { userName, password, next: next ?? "" },
      headers: { origin: baseURL ?? "" },
      maxRedirects: 0,
    });
    expect([next, answer.status(), answer.headers().location]).toEqual([next, 303, location]);
  }
});
