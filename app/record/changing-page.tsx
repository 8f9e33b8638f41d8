import type { ReactNode } from "react";
import { type SignedIn, signedIn } from "#app/_trpc/server.ts";
import { NotForYou } from "#app/record/not-for-you.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { may, type Procedure } from "#shared/access/may.ts";

type ChangingPageProps = {
  /** The book that is changed: where it is read, the way there in words, and what a change asks. */
  readonly book: { readonly href: string; readonly word: string; readonly asks: Procedure };
  readonly heading: string;
  readonly content: (api: SignedIn["api"]) => Promise<ReactNode>;
};

/** A page that changes one of the clinic's books, for those who may. */
export async function ChangingPage({ book, heading, content }: ChangingPageProps): Promise<ReactNode> {
  const { api, frame, person } = await signedIn();
  return (
    <PageFrame
      here="Clinic's books"
      frame={frame}
      heading={heading}
      lede={<a href={book.href}>{book.word}</a>}
    >
      {may(person, book.asks) ? await content(api) : <NotForYou back={book.href} />}
    </PageFrame>
  );
}
