import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { ClosingRecordForm } from "#app/staff/closing-record-form.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { roleWords } from "#shared/words/roles.ts";

export const metadata: Metadata = { title: "Close an account - Dwellbook" };

type ClosePageProps = { readonly params: Promise<{ readonly id: string }> };

/** Who takes the steps of somebody who leaves. */
export default async function ClosePage({ params }: ClosePageProps): Promise<ReactNode> {
  const { id: closes } = await params;
  const { api, frame, person } = await signedIn();
  const leaving = (await api.staff.list()).find(({ id }) => id === closes);
  if (leaving === undefined) notFound();
  const { staff } = await api.record.beside();
  return (
    <PageFrame
      here="Clinic's books"
      frame={frame}
      heading="Who takes their steps?"
      lede={`${leaving.fullName}, ${roleWords(leaving)}`}
    >
      {!leaving.isOpen && (
        <p role="status">
          This account is closed. <a href="/staff">To the staff</a>
        </p>
      )}
      {leaving.isOpen && !may(person, "staff.close") && <NotForYou back="/staff" />}
      {leaving.isOpen && may(person, "staff.close") && (
        <ClosingRecordForm
          context={{ closes, staff }}
          draft={await api.draft.load({ form: "staff.close", subject: closes })}
        />
      )}
    </PageFrame>
  );
}
