import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { ExchangeTable } from "#app/exchanges/exchange-table.tsx";
import { placeFromAddress, placeInAddress } from "#app/exchanges/place.ts";
import { StripKey } from "#app/strip/strip-key.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import styles from "./exchanges.module.css";

export const metadata: Metadata = { title: "Exchanges - Dwellbook" };

type ExchangesPageProps = {
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** Which tubes come next: one page of the due list, drawn. */
export default async function ExchangesPage({ searchParams }: ExchangesPageProps): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const { after } = await searchParams;
  const place = placeFromAddress(typeof after === "string" ? after : undefined);
  const { today, lines, next } = await api.list.exchanges({ place });
  return (
    <PageFrame
      frame={frame}
      heading="Which tubes come next?"
      lede={place === undefined ? "The longest due first" : "Further down the list"}
      here="Exchanges"
    >
      <div className={styles.list}>
        {lines.length === 0 ? (
          <p className={styles.none}>{noneWords(place === undefined)}</p>
        ) : (
          <ExchangeTable today={today} lines={lines} />
        )}
      </div>
      <nav className={styles.pages} aria-label="Pages of the list" data-screen-only>
        {place !== undefined && <a href="/exchanges">Back to the longest due</a>}
        {next !== null && (
          <a href={`/exchanges?after=${placeInAddress(next)}`} rel="next">
            The tubes after these
          </a>
        )}
      </nav>
      {lines.length > 0 && <StripKey />}
    </PageFrame>
  );
}

const noneWords = (isFirst: boolean): string =>
  isFirst
    ? "No tube is in. As soon as one is recorded, it stands here with the date of its exchange, removal or review."
    : "No tube comes after these.";
