import type { ReactNode } from "react";
import { BookName } from "#app/ui/book-name.tsx";
import { Colophon } from "#app/ui/colophon.tsx";
import { FinderField } from "#app/ui/finder-field.tsx";
import { FINDER_ID } from "#app/ui/finder-id.ts";
import { type Identity, IdentityBar } from "#app/ui/identity-bar.tsx";
import { KeyListener } from "#app/ui/keys/key-listener.tsx";
import type { SessionLeft } from "#app/ui/session/session-left.ts";
import { SessionWatch } from "#app/ui/session/session-watch.tsx";
import styles from "./page-frame.module.css";

/** What stands on every page of someone who is signed in. */
export type Frame = {
  readonly clinic: string;
  /** "Fri 6 Nov 2026", a day of the clinic. */
  readonly today: string;
  /** Lines that hold for every page: a demonstration, a moved clock, example rows. */
  readonly standing: readonly string[];
  /** One of those lines says EXAMPLE of every date on the page. */
  readonly isExample: boolean;
  /** Red flags that nobody has, in one line, and where the oldest is handed over. */
  readonly unhanded: { readonly says: string; readonly href: string } | null;
  readonly person: { readonly userName: string; readonly name: string; readonly role: string };
  readonly session: SessionLeft;
  /** What this person opens now and then and not daily. */
  readonly books: readonly Book[];
};

/** A page that is no daily one: its name, and what is in it. */
export type Book = { readonly href: string; readonly word: string; readonly says: string };

/** The head is one line on a desktop screen: what is opened daily stands in it, everything else behind its last word. */
const places = [
  { href: "/", word: "Today" },
  { href: "/exchanges", word: "Exchanges" },
  { href: "/visits", word: "Visits" },
  { href: "/calls", word: "Calls" },
  { href: "/reviews", word: "Reviews" },
  // Goes on to the finder, which then has the focus.
  { href: `/patients#${FINDER_ID}`, word: "Patients" },
  { href: "/books", word: "Clinic's books" },
] as const;

export type Place = (typeof places)[number]["word"];

type PageFrameProps = {
  readonly frame: Frame;
  /** The one question that the page answers, or the noun that it shows. */
  readonly heading: string;
  /** What stands at the head's other end: a date, a count in words. */
  readonly lede?: ReactNode;
  readonly here?: Place;
  readonly identity?: Identity;
  /**
   * `home`: what prints is a paper that goes home, and of the frame only the lines that hold for every page stand on it. `one sheet`: the
   * head is small, so that all of it stands on one. `wide`: the long side of the sheet is for its columns.
   */
  readonly paper?: "home" | "one sheet" | "wide" | undefined;
  readonly children: ReactNode;
};

/** A page: running head, who it is about, its question, its content. */
export function PageFrame({
  frame,
  heading,
  lede,
  here,
  identity,
  paper,
  children,
}: PageFrameProps): ReactNode {
  return (
    <div className={styles.sheet} data-paper={paper}>
      <a className={styles.skip} href="#content" data-screen-only>
        To the content
      </a>
      <header>
        <RunningHead frame={frame} here={here} />
        {frame.unhanded !== null && (
          <p className={styles.unhanded} data-screen-only>
            <a href={frame.unhanded.href}>
              <bdi>{frame.unhanded.says}</bdi>
            </a>
          </p>
        )}
        {frame.standing.length > 0 && (
          <div className={styles.standing}>
            {frame.standing.map((line) => (
              <p key={line}>{line}</p>
            ))}
          </div>
        )}
      </header>
      {identity !== undefined && <IdentityBar {...identity} />}
      <main id="content" tabIndex={-1}>
        <header className={styles.opening}>
          <h1>{heading}</h1>
          {lede !== undefined && <p className={styles.lede}>{lede}</p>}
        </header>
        {children}
      </main>
      <Colophon clinic={frame.clinic} books={frame.books} />
      <KeyListener />
      <SessionWatch userName={frame.person.userName} session={frame.session} />
    </div>
  );
}

function RunningHead({
  frame,
  here,
}: {
  readonly frame: Frame;
  readonly here: Place | undefined;
}): ReactNode {
  return (
    <div className={styles.running}>
      <BookName />
      <nav className={styles.nav} aria-label="Pages" data-screen-only>
        {places.map(({ href, word }) => (
          <a key={href} href={href} aria-current={word === here ? "page" : undefined}>
            {word}
          </a>
        ))}
      </nav>
      <FinderField />
      <div className={styles.folio}>
        <span data-paper-only>{frame.clinic}</span>
        <span>{frame.today}</span>
        <span>
          {frame.person.name}
          <span data-paper-only>, {frame.person.role}</span>
        </span>
        <form method="post" action="/api/sign-out" data-screen-only>
          <button className={styles.plain} type="submit">
            Sign out
          </button>
        </form>
      </div>
    </div>
  );
}
