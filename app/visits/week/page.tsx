import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import type { Query } from "#app/lists/filter-address.ts";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { choosingIn } from "#app/visits/choosing.ts";
import { dayAsked } from "#app/visits/day-asked.ts";
import { DayNav, mondayOf } from "#app/visits/day-nav.tsx";
import { forWhom } from "#app/visits/for-whom.tsx";
import { WeekTable } from "#app/visits/week-table.tsx";
import { addDays } from "#shared/day/day.ts";
import { printDay } from "#shared/day/print-day.ts";

export const metadata: Metadata = { title: "Visits of a week - Dwellbook" };

type WeekPageProps = { readonly searchParams: Promise<Query> };

/** A week of visits: its days under one another, each room in a column. */
export default async function WeekPage({ searchParams }: WeekPageProps): Promise<ReactNode> {
  const { api, frame, today } = await signedIn();
  const query = await searchParams;
  const asked = dayAsked(query, today);
  const choosing = choosingIn(query);
  const whom = await forWhom(api, choosing);
  const monday = mondayOf(asked.on);
  const { days } = await api.visit.days({ from: monday, days: 7 });
  return (
    <PageFrame
      frame={frame}
      heading="Who comes in the week?"
      lede={`${printDay(monday)} to ${printDay(addDays(monday, 6))}`}
      here="Visits"
      {...(whom === null ? {} : { identity: whom.identity })}
    >
      {whom !== null && <p>{whom.says}</p>}
      <DayNav path="/visits/week" {...{ asked, today, choosing }} />
      <WeekTable {...{ days, today, choosing }} />
    </PageFrame>
  );
}
