import type { ReactNode } from "react";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

type ChangingPageProps = {
  readonly heading: string;
  readonly content: (api: SignedIn["api"]) => Promise<ReactNode>;
};

/** A page that changes the calendar, for those who may. */
export async function ChangingPage({ heading, content }: ChangingPageProps): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  return (
    <PageFrame
      here="Clinic's books"
      frame={frame}
      heading={heading}
      lede={<a href="/calendar">All of the calendar</a>}
    >
      {may(person, "calendar.change") ? await content(api) : <NotForYou back="/calendar" />}
    </PageFrame>
  );
}

/** Said where an address names a closure or a half day that stands no longer. */
export function NoLongerThere(): ReactNode {
  return (
    <p>
      This no longer stands in the calendar. <a href="/calendar">To the calendar</a>
    </p>
  );
}
