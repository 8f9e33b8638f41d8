import type { Metadata } from "next";
import { redirect } from "next/navigation";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { filterInQuery, hasBlanks, listHref, type Query } from "#app/lists/filter-address.ts";
import { FilterLine } from "#app/lists/filter-line.tsx";
import type { TodayPage as Day } from "#app/lists/list-line.ts";
import { marksExample } from "#app/lists/marks-example.ts";
import { LooseEnds } from "#app/today/loose-ends.tsx";
import { partHref } from "#app/today/part-href.ts";
import { partWords } from "#app/today/part-words.ts";
import { PartsLine } from "#app/today/parts-line.tsx";
import { StepsTable } from "#app/today/steps-table.tsx";
import styles from "#app/today/today.module.css";
import { type Frame, PageFrame } from "#app/ui/page-frame.tsx";
import type { Person } from "#shared/access/person.ts";
import { type DayPart, dayParts } from "#shared/step/day-part.ts";

export const metadata: Metadata = { title: "Today - Dwellbook" };

const PATH = "/";

/** What needs somebody now stands first: tubes out; past latest; without a date; today's visits and calls; loose ends, folded. */
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
  const { asked, parts } = day;
  const all = dayParts.reduce((sum, part) => sum + parts[part].total, 0);
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

const steps = dayParts.filter((part) => part !== "loose-ends");

function Parts({ frame, day, person }: PartsProps): ReactNode {
  const { today, asked, parts, looseEnds } = day;
  const shown = dayParts.flatMap((part) => parts[part].lines);
  const every = { today, person, marksExample: marksExample(frame, shown) };
  const of = (part: DayPart) => ({
    ...parts[part],
    /** An empty part says no more than the filter lets it see. */
    none: asked.words === null ? partWords[part].none : "None under this filter.",
    allHref: partHref(part, asked.texts),
  });
  return (
    <>
      <PartsLine parts={parts} />
      <div className={styles.parts}>
        {steps.map((part) => (
          <div key={part} id={part}>
            <StepsTable caption={partWords[part].head} {...of(part)} {...every} />
            {part === "calls" && (
              <p data-screen-only>
                <a href="/calls">The call list, in the order in which they are rung</a>
              </p>
            )}
          </div>
        ))}
        <div id="loose-ends">
          <LooseEnds kinds={looseEnds} {...of("loose-ends")} {...every} />
        </div>
      </div>
    </>
  );
}
