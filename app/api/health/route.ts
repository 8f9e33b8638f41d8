import { refusing } from "#app/api/_web/refusing.ts";
import { database } from "#server/database.ts";

/** For whoever watches the server: it runs and its database can be used; else 503 and what to mend. Says nothing of its content. */
export const GET = refusing(() => {
  database();
  return Response.json({ status: "up" });
});

export const dynamic = "force-dynamic";
