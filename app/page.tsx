import type { Metadata } from "next";
import { redirect } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { filterInQuery, hasBlanks, listHref, type Query } from "#app/lists/filter-address.ts";
import { FilterLine } from "#app/lists/filter-line.tsx";
import type { TodayPage as Day } from "#app/lists/list-line.ts";
import { marksExample } from "#app/lists/marks-example.ts";
import { LooseEnds } from "#app/today/loose-ends.tsx";
import { StepsTable } from "#app/today/steps-table.tsx";
import styles from "#app/today/today.module.css";
import { type Frame, PageFrame } from "#app/ui/page-frame.tsx";
import type { Person } from "#shared/access/person.ts";

export const metadata: Metadata = { title: "Today - Dwellbook" };

const PATH = "/";

/** What needs somebody now stands first: tubes out; past latest; today's visits and calls; loose ends, folded. */
export default async function TodayPage({
  searchParams,
}: {
  readonly searchParams: Promise<Query>;
}): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  const query = await searchParams;
  const filter = filterInQuery(query);
  if (hasBlanks(query)) redirect(listHref(PATH, filter));
  const day = await api.list.today({ filter });
  const { asked, counts } = day;
  const all = counts.urgent + counts.pastLatest + counts.dueToday + counts.calls + counts.looseEnds.length;
  return (
    <PageFrame
      frame={frame}
      heading="Who needs something today?"
      lede={asked.words ?? undefined}
      here="Today"
    >
      <FilterLine path={PATH} asked={asked} />
      {asked.words !== null && all === 0 ? (
        <p className={styles.none}>
          Nothing stands under this filter. <a href={PATH}>Take the filter away</a>
        </p>
      ) : (
        asked.refusals.length === 0 && <Parts {...{ frame, day, person }} />
      )}
    </PageFrame>
  );
}

type PartsProps = { readonly frame: Frame; readonly day: Day; readonly person: Person };

function Parts({ frame, day, person }: PartsProps): ReactNode {
  const { today, asked, out, pastLatest, dueToday, calls, looseEnds, counts } = day;
  const shown = [...out, ...pastLatest, ...dueToday, ...calls, ...looseEnds];
  const every = { today, person, marksExample: marksExample(frame, shown) };
  /** An empty part says no more than the filter lets it see. */
  const none = (words: string): string => (asked.words === null ? words : "None under this filter.");
  const rest = { href: listHref("/exchanges", asked.texts), word: "The others stand in Exchanges" };
  return (
    <div className={styles.parts}>
      <StepsTable
        caption="Tubes out"
        lines={out}
        total={counts.urgent}
        none={none("No tube is recorded as out, partly out, or left behind in part.")}
        {...every}
      />
      <StepsTable
        caption="Past latest"
        lines={pastLatest}
        total={counts.pastLatest}
        none={none("No tube is past its latest date.")}
        rest={rest}
        {...every}
      />
      <StepsTable
        caption="Visits and steps due"
        lines={dueToday}
        total={counts.dueToday}
        none={none("No exchange is planned for today and no step is due.")}
        rest={rest}
        {...every}
      />
      <StepsTable
        caption="Calls due"
        lines={calls}
        total={counts.calls}
        none={none("No call is due.")}
        {...every}
      />
      <LooseEnds
        lines={looseEnds}
        kinds={counts.looseEnds}
        none={none("No record waits for a missing fact.")}
        {...every}
      />
    </div>
  );
}
