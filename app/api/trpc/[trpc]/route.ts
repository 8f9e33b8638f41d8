import { fetchRequestHandler } from "@trpc/server/adapters/fetch";
import { readBody } from "#app/api/_web/read-body.ts";
import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { statusOf } from "#app/api/_web/status-of.ts";
import { createContext } from "#server/api/context.ts";
import { appRouter } from "#server/api/router.ts";
import { database } from "#server/database.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

const LIMIT_KIB = 256;

/** What never reached the API is refused in the API's own shape, so that a form shows it like any other refusal. */
function refusedBefore({ refusals }: DomainError): Response {
  const status = statusOf(refusals[0]?.code);
  const message = refusals.map(refusalSentence).join(" ");
  const [name, code] = status === 413 ? ["PAYLOAD_TOO_LARGE", -32_013] : ["FORBIDDEN", -32_003];
  const data = { code: name, httpStatus: status, refusals };
  return Response.json({ error: { message, code, data } }, { status });
}

/** Only POST, for queries too: identifiers stand in no address. */
export async function POST(request: Request): Promise<Response> {
  try {
    refuseFromElsewhere(request);
    const body = await readBody(request, LIMIT_KIB);
    return await fetchRequestHandler({
      endpoint: "/api/trpc",
      // A query without input comes without a body, and an empty text is no JSON.
      req: new Request(request.url, { method: "POST", headers: request.headers, body: body || "null" }),
      router: appRouter,
      allowMethodOverride: true,
      createContext: () => createContext(database(), request.headers),
    });
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return refusedBefore(error);
  }
}
