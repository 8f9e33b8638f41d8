import type { Metadata } from "next";
import { notFound } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { daysAsked } from "#app/figures/days-asked.ts";
import { PatientCell } from "#app/lists/patient-cell.tsx";
import { DataTable } from "#app/ui/data-table.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { figureNames } from "#shared/call/figures.ts";
import { printDay } from "#shared/day/print-day.ts";
import { figureWords } from "#shared/words/figures.ts";

export const metadata: Metadata = { title: "Figure - Dwellbook" };

type BehindPageProps = {
  readonly params: Promise<{ readonly figure: string }>;
  readonly searchParams: Promise<{ readonly days?: string }>;
};

/** Whoever is behind one figure. */
export default async function BehindPage({ params, searchParams }: BehindPageProps): Promise<ReactNode> {
  const asked = decodeURIComponent((await params).figure);
  const figure = figureNames.find((name) => name === asked);
  if (figure === undefined) notFound();
  const { api, frame } = await signedIn();
  const days = daysAsked((await searchParams).days);
  const rows = await api.figure.behind({ days, figure });
  return (
    <PageFrame
      frame={frame}
      heading="Who is behind this figure?"
      lede={`${figureWords(figure)}, last ${days} days`}
      here="Clinic's books"
    >
      <DataTable
        caption={figureWords(figure)}
        columns={[
          { head: "Whose", cell: ({ patient }) => <PatientCell patient={patient} /> },
          { head: "Day", cell: ({ on }) => printDay(on) },
        ]}
        rows={rows.map((row, place) => ({ ...row, place }))}
        keyOf={({ place }) => String(place)}
        none="Nobody is counted here in these days."
      />
      <p>
        <a href={`/figures?days=${days}`}>To the figures</a>
      </p>
    </PageFrame>
  );
}
