import { TRPCError } from "@trpc/server";
import { type NextRequest, NextResponse } from "next/server";
import { statusOf } from "#app/api/_web/status-of.ts";
import { DomainError } from "#shared/errors/refusal.ts";
import { refusalSentence } from "#shared/words/refusals.ts";

type Handler = (request: NextRequest) => Response | Promise<Response>;

/** A handler whose refusals are answered with their sentence and status; any other error stays one. */
export const refusing =
  (handler: Handler): Handler =>
  async (request) => {
    try {
      return await handler(request);
    } catch (thrown) {
      // What the API refuses comes wrapped in an error of its own.
      const error = thrown instanceof TRPCError ? thrown.cause : thrown;
      if (!(error instanceof DomainError)) throw thrown;
      const sentence = error.refusals.map(refusalSentence).join(" ");
      return NextResponse.json({ sentence }, { status: statusOf(error.refusals[0]?.code) });
    }
  };
