import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { TelephoneRecordForm } from "#app/clinic/telephone-record-form.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";

export const metadata: Metadata = { title: "Telephone of the clinic - Dwellbook" };

/** The number on the output diary and the tube card. */
export default async function TelephonePage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  return (
    <PageFrame
      here="Clinic's books"
      frame={frame}
      heading="Which number do patients ring?"
      lede={may(person, "clinic.view") ? <a href="/clinic">All of the clinic</a> : undefined}
    >
      {may(person, "clinic.telephone") ? (
        <TelephoneRecordForm
          phone={(await api.clinic.view()).phone}
          draft={await api.draft.load({ form: "clinic.telephone", subject: "" })}
        />
      ) : (
        <NotForYou back="/" />
      )}
    </PageFrame>
  );
}
