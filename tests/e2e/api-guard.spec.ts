import { expect, test } from "#tests/e2e/support/test.ts";

const draft = (text: string) => ({
  form: "exchange",
  subject: "",
  content: { actId: "a".repeat(22), texts: { note: text } },
});

test.use({ role: "nurse" });

test("a body over 256 KB is answered with 413 and a sentence", async ({ request, baseURL }) => {
  const headers = { origin: baseURL ?? "" };
  const answer = await request.post("/api/trpc/draft.save", { data: draft("x".repeat(256 * 1024)), headers });
  expect(answer.status()).toBe(413);
  expect(await answer.json()).toMatchObject({
    error: {
      message: "This is more than 256 KB at once. Shorten the longest text.",
      data: { refusals: [{ code: "body-too-long" }] },
    },
  });
});

test("a body of 11 MB is refused too, not cut", async ({ request, baseURL }) => {
  const headers = { origin: baseURL ?? "" };
  const answer = await request.post("/api/trpc/draft.save", {
    data: draft("x".repeat(11 * 1024 ** 2)),
    headers,
  });
  expect(answer.status()).toBe(413);
});

test("a request that no page of this site sent is not carried out", async ({ request, baseURL }) => {
  const own = await request.post("/api/trpc/draft.save", {
    data: draft("own"),
    headers: { origin: baseURL ?? "" },
  });
  expect(own.status()).toBe(200);
  const others: Record<string, string>[] = [
    { origin: "https://elsewhere.example" },
    { origin: "null" },
    { origin: baseURL ?? "", "sec-fetch-site": "cross-site" },
    { origin: baseURL ?? "", "sec-fetch-site": "same-site" },
    {},
  ];
  for (const headers of others) {
    const answer = await request.post("/api/trpc/draft.save", { data: draft("theirs"), headers });
    expect(answer.status()).toBe(403);
  }
});

test("the API takes no GET: what is asked for stands in no address", async ({ request }) => {
  expect((await request.get("/api/trpc/staff.list")).status()).toBe(405);
});
