import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { cache } from "react";
import { frameOf } from "#app/_trpc/frame-of.ts";
import type { Frame } from "#app/ui/page-frame.tsx";
import { createContext } from "#server/api/context.ts";
import { createCaller } from "#server/api/router.ts";
import { listUnhanded } from "#server/calls/unhanded-flags.ts";
import { clinicView } from "#server/clinic-view.ts";
import { machineNow } from "#server/clock.ts";
import { database } from "#server/database.ts";
import type { Person } from "#shared/access/person.ts";
import type { Day } from "#shared/day/day.ts";

export type SignedIn = {
  /** The API, called from the server's side with the same checks. */
  readonly api: ReturnType<typeof createCaller>;
  readonly frame: Frame;
  readonly person: Person;
  /** The clinic's day. */
  readonly today: Day;
};

/** Who asks for this page, and what stands around it. Leads to the sign-in page when nobody is signed in. Counts as use. */
export const signedIn = cache(async (): Promise<SignedIn> => {
  const asked = await headers();
  const db = database();
  const context = createContext(db, asked);
  const { session, staff } = context;
  if (session === null || staff === null) {
    redirect(`/sign-in?next=${encodeURIComponent(asked.get("x-asked-path") ?? "/")}`);
  }
  const clinic = clinicView(db);
  return {
    api: createCaller(context),
    frame: frameOf({ clinic, unhanded: listUnhanded(db) }, session, machineNow()),
    person: staff,
    today: clinic.today,
  };
});
