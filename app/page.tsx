import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { LooseEnds } from "#app/today/loose-ends.tsx";
import { StepsTable } from "#app/today/steps-table.tsx";
import styles from "#app/today/today.module.css";
import { PageFrame } from "#app/ui/page-frame.tsx";

export const metadata: Metadata = { title: "Today - Dwellbook" };

const inExchanges = { href: "/exchanges", word: "The others stand in Exchanges" };

/** What needs somebody now stands first: tubes out; past latest; today's visits and calls; loose ends, folded. */
export default async function TodayPage(): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const { today, out, pastLatest, dueToday, calls, looseEnds, counts } = await api.list.today();
  const shown = [...out, ...pastLatest, ...dueToday, ...calls, ...looseEnds];
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
          rest={inExchanges}
          {...every}
        />
        <StepsTable
          caption="Visits and steps due"
          lines={dueToday}
          total={counts.dueToday}
          none="No exchange is planned for today and no step is due."
          rest={inExchanges}
          {...every}
        />
        <StepsTable
          caption="Calls due"
          lines={calls}
          total={counts.calls}
          none="No call is due."
          {...every}
        />
        <LooseEnds lines={looseEnds} kinds={counts.looseEnds} {...every} />
      </div>
    </PageFrame>
  );
}
