import type { Metadata } from "next";
import type { ReactNode } from "react";
import { orNotFound } from "#app/_trpc/or-not-found.ts";
import { signedIn } from "#app/_trpc/server.ts";
import { AnswersForm } from "#app/import/answers-form.tsx";
import { BringIn } from "#app/import/bring-in.tsx";
import styles from "#app/import/import.module.css";
import type { ImportView } from "#app/import/import-view.ts";
import { AsideTable, ComingTable } from "#app/import/rows-tables.tsx";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may } from "#shared/access/may.ts";
import { refusalSentence } from "#shared/words/refusals.ts";
import { unsaidSentence } from "#shared/words/row-preview.ts";

export const metadata: Metadata = { title: "How will these rows stand? - Dwellbook" };

const HEADING = "How will these rows stand?";

type ImportListProps = {
  readonly params: Promise<{ readonly id: string }>;
  readonly searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
};

/** One list, before anything of it is in the record: its columns, what is asked, every row as it will stand. */
export default async function ImportListPage({ params, searchParams }: ImportListProps): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  if (!may(person, "sheet.view"))
    return (
      <PageFrame here="Clinic's books" frame={frame} heading={HEADING}>
        <NotForYou back="/" />
      </PageFrame>
    );
  const { id } = await params;
  const asked = Number((await searchParams).page ?? 1);
  const page = Number.isInteger(asked) && asked >= 1 && asked <= 1000 ? asked - 1 : 0;
  const view = await orNotFound(api.sheet.view({ sheetId: id, page }));
  return (
    <PageFrame here="Clinic's books" frame={frame} heading={HEADING} lede={<bdi>{view.fileName}</bdi>}>
      <AnswersForm sheetId={id} isAnswered={view.refusals.length === 0} {...view} />
      {view.refusals.length > 0 ? <ToAnswer view={view} /> : <Rows view={view} sheetId={id} />}
    </PageFrame>
  );
}

function ToAnswer({ view }: { readonly view: ImportView }): ReactNode {
  return (
    <section aria-labelledby="to-answer">
      <h2 id="to-answer">To answer before the rows can be read</h2>
      <ul>
        {view.refusals.map((refusal) => (
          <li key={refusalSentence(refusal)}>{refusalSentence(refusal)}</li>
        ))}
      </ul>
    </section>
  );
}

const rowsIn = (rows: readonly number[]): string =>
  `${rows.length === 1 ? "row" : "rows"} ${rows.join(", ")}`;

/** What becomes of all rows, in one sentence each. */
function sums({ counts, here, above, noTube, repeated, rowCount }: ImportView): readonly string[] {
  const { coming, patients, aside } = counts;
  const said = [
    `Of ${rowCount} rows ${coming} come in, the tubes of ${patients} ${patients === 1 ? "patient" : "patients"}.`,
    aside > 0 && `${aside} ${aside === 1 ? "is" : "are"} set aside until mended.`,
    here.length > 0 && `${here.length} ${here.length === 1 ? "was" : "were"} brought in before.`,
    above.length > 0 &&
      `Said further up already: ${above.map(({ row, above: first }) => `row ${row} by row ${first}`).join(", ")}.`,
    noTube.length > 0 && `Left out, not a row of a tube: ${rowsIn(noTube)}.`,
    repeated.length > 0 && `Headings repeated in ${rowsIn(repeated)} are passed over.`,
  ];
  return said.filter((line) => line !== false);
}

function Rows({ view, sheetId }: { readonly view: ImportView; readonly sheetId: string }): ReactNode {
  return (
    <div className={styles.tables}>
      <section>
        <p className={styles.sum}>{sums(view).join(" ")}</p>
        <BringIn sheetId={sheetId} tubes={view.counts.coming} rows={view.rowCount} />
      </section>
      {view.counts.aside > 0 && (
        <section>
          <AsideTable view={view} />
          <p>
            <a href={`/api/sheet/${sheetId}`}>Save the rows set aside</a>, with what to mend: mended in the
            spreadsheet, that file is brought in like any other.
          </p>
        </section>
      )}
      <section>
        {view.counts.coming > 0 && <p className={styles.unsaid}>{unsaidSentence(view.answers.issuer)}</p>}
        <ComingTable view={view} />
        <Pages view={view} />
      </section>
    </div>
  );
}

function Pages({ view }: { readonly view: ImportView }): ReactNode {
  const { page, last } = view.pages;
  if (last === 0) return null;
  return (
    <nav className={styles.pages} aria-label="Pages of the list">
      {page > 0 && <a href={`?page=${page}`}>The rows before these</a>}
      {page < last && <a href={`?page=${page + 2}`}>The rows after these</a>}
    </nav>
  );
}
