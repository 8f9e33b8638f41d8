import { type NextRequest, NextResponse } from "next/server";
import { ownPath } from "#app/api/_web/own-path.ts";
import { readBody } from "#app/api/_web/read-body.ts";
import { refuseFromElsewhere } from "#app/api/_web/refuse-from-elsewhere.ts";
import { setSaid } from "#app/api/_web/said-cookie.ts";
import { statusOf } from "#app/api/_web/status-of.ts";
import { machineNow } from "#server/clock.ts";
import { database } from "#server/database.ts";
import { readEnv } from "#server/env.ts";
import { clientAddress } from "#server/sign-in/client-address.ts";
import { keepToken, tokenIn } from "#server/sign-in/cookie.ts";
import { signIn } from "#server/sign-in/sign-in.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

const LIMIT_KIB = 8;

type Typed = { readonly userName: string; readonly next: string };

/** A form is led back to its page; the dialog over a page asks for JSON and stays where it is. */
function answer(request: NextRequest, typed: Typed, error?: DomainError): NextResponse {
  const sentence = error === undefined ? null : error.refusals.map(refusalSentence).join(" ");
  if (request.headers.get("accept") === "application/json") {
    return NextResponse.json({ sentence }, { status: error ? statusOf(error.refusals[0]?.code) : 200 });
  }
  const next = ownPath(typed.next);
  const location = sentence === null ? next : `/sign-in?next=${encodeURIComponent(next)}`;
  const response = new NextResponse(null, { status: 303, headers: { location } });
  if (sentence !== null) setSaid(response, { sentence, userName: typed.userName });
  return response;
}

async function signInWith(request: NextRequest, form: URLSearchParams): Promise<string> {
  const attempt = {
    userName: form.get("userName") ?? "",
    password: form.get("password") ?? "",
    address: clientAddress(request.headers, readEnv(process.env).TRUSTED_PROXY),
    replaces: tokenIn(request.headers),
  };
  return signIn(database(), attempt, machineNow());
}

/** `userName`, `password` and, from the page, `next`: the path that was asked for. */
export async function POST(request: NextRequest): Promise<NextResponse> {
  let typed: Typed = { userName: "", next: "/" };
  try {
    refuseFromElsewhere(request);
    const form = new URLSearchParams(await readBody(request, LIMIT_KIB));
    typed = { userName: form.get("userName") ?? "", next: form.get("next") ?? "/" };
    const token = await signInWith(request, form);
    const response = answer(request, typed);
    response.headers.append("set-cookie", keepToken(token));
    return response;
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return answer(request, typed, error);
  }
}
