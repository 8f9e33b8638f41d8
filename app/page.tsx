import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { LooseEnds } from "#app/today/loose-ends.tsx";
import { StepsTable } from "#app/today/steps-table.tsx";
import styles from "#app/today/today.module.css";
import { PageFrame } from "#app/ui/page-frame.tsx";

export const metadata: Metadata = { title: "Today - Dwellbook" };

/** What needs somebody now stands first: tubes out; past latest; today's visits and calls; loose ends, folded. */
export default async function TodayPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const { today, out, pastLatest, dueToday, looseEnds, counts } = await api.list.today();
  const shown = [...out, ...pastLatest, ...dueToday, ...looseEnds];
  const every = { today, person, marksExample: shown.some(({ row }) => row === "approved") };
  return (
    <PageFrame frame={frame} heading="Who needs something today?" here="Today">
      <div className={styles.parts}>
        <StepsTable
          caption="Tubes out"
          lines={out}
          total={counts.urgent}
          none="No tube is recorded as out, partly out, or left behind in part."
          {...every}
        />
        <StepsTable
          caption="Past latest"
          lines={pastLatest}
          total={counts.pastLatest}
          none="No tube is past its latest date."
          {...every}
        />
        <StepsTable
          caption="Due today"
          lines={dueToday}
          total={counts.dueToday}
          none="No visit, call or step is due today."
          {...every}
        />
        <LooseEnds lines={looseEnds} kinds={counts.looseEnds} {...every} />
      </div>
    </PageFrame>
  );
}
