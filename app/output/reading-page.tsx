import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import type { OutputPage, TubePage } from "#app/tubes/tube-page.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may, type Procedure } from "#shared/access/may.ts";
import { tubeName } from "#shared/tube/name.ts";
import { whatAlarmsOf } from "#shared/words/output.ts";

export type Open = { readonly signed: SignedIn; readonly view: TubePage; readonly output: OutputPage };

type ReadingPageParts = {
  readonly tubeId: string;
  readonly heading: string;
  readonly procedure: Procedure;
  readonly form: (open: Open) => Promise<ReactNode>;
};

/** A page on which a reading is recorded, corrected or voided, with patient, tube and side in sight. */
export async function readingPage({
  tubeId,
  heading,
  procedure,
  form,
}: ReadingPageParts): Promise<ReactNode> {
  const signed = await signedIn();
  const view = await orNotFound(signed.api.tube.view({ tubeId }));
  const output = await signed.api.tube.output({ tubeId });
  const open = { signed, view, output };
  return (
    <PageFrame
      frame={signed.frame}
      heading={heading}
      identity={identityOf(view.patient, tubeName(view.tube))}
    >
      <p>{whatAlarmsOf(view.tube)}</p>
      {await body(open, { tubeId, procedure, form })}
    </PageFrame>
  );
}

async function body(
  open: Open,
  { tubeId, procedure, form }: Omit<ReadingPageParts, "heading">,
): Promise<ReactNode> {
  if (!open.output.hasOutput) return <p>This tube lies wholly inside and has no output.</p>;
  if (!may(open.signed.person, procedure)) return <NotForYou back={`/tubes/${tubeId}/output`} />;
  return form(open);
}
