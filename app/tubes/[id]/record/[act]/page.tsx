import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { identityOf } from "#app/patients/identity-of.ts";
import { BeforeShutting } from "#app/record/before-shutting.tsx";
import { BesideStent } from "#app/record/beside-stent.tsx";
import { RecordEvent } from "#app/record/form-registry.tsx";
import { HowItStands } from "#app/record/how-it-stands.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { mayRecord, slugOf, tubeFormOf } from "#app/record/procedures.ts";
import { namesOfStaff } from "#app/staff/names-of-staff.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { planBeside } from "#shared/fit/tube-in-place.ts";
import { numberedTubes } from "#shared/record/numbered-tubes.ts";
import { plannedTexts } from "#shared/record/tube/planned-texts.ts";
import { tubeInForm } from "#shared/record/tube-in-form.ts";
import { tubeName } from "#shared/tube/name.ts";
import { actLabels } from "#shared/words/acts.ts";

export const metadata: Metadata = { title: "Record - Dwellbook" };

type RecordTubePageProps = {
  readonly params: Promise<{ readonly id: string; readonly act: string }>;
  readonly searchParams: Promise<{ readonly planned?: string | string[] }>;
};

/** One form about one tube, with patient, tube and side in sight. */
export default async function RecordTubePage({
  params,
  searchParams,
}: RecordTubePageProps): Promise<ReactNode> {
  const { id: tubeId, act } = await params;
  const kind = tubeFormOf(act);
  if (kind === undefined) notFound();
  const { api, frame, person, today } = await signedIn();
  const view = await orNotFound(api.tube.view({ tubeId }));
  const { tube, patient } = view;
  const nameOf = namesOfStaff(await api.staff.list());
  const leaveTo = `/tubes/${tubeId}`;
  const beside = await api.record.beside();
  const planned = (await searchParams).planned === "yes" ? tube.plannedExchange : null;
  return (
    <PageFrame frame={frame} heading={actLabels[kind]} identity={identityOf(patient, tubeName(tube))}>
      <HowItStands
        steps={view.steps}
        story={view.story}
        none="This record has ended: nothing is open."
        {...{ today, nameOf }}
      />
      {(kind === "capped" || kind === "clamp trial started") && (
        <BeforeShutting view={view} output={await api.tube.output({ tubeId })} />
      )}
      {kind === "removed" && <BesideStent view={view} />}
      {mayRecord(person, kind) ? (
        <RecordEvent
          kind={kind}
          patientId={patient.id}
          tubeId={tubeId}
          context={{
            ...beside,
            tube: tubeInForm(tube, view.steps.find((step) => step.kind === "alarm")?.why),
            tubes: kind === "removed" ? numberedTubes(view.others) : [],
            opens: { tubeId: "", number: 0 },
            planReasons: view.rows.planning?.reasons?.offered ?? [],
          }}
          lastSeen={view.lastSeen}
          draft={await api.draft.load({ form: `record.${slugOf(kind)}`, subject: tubeId })}
          leaveTo={leaveTo}
          {...(planned !== null && { begun: plannedTexts(planned, beside.shelf) })}
          amends={null}
          plan={kind === "exchange planned" ? { ...planBeside(view), before: tube.plannedExchange } : null}
        />
      ) : (
        <NotForYou back={leaveTo} />
      )}
    </PageFrame>
  );
}
