"use client";

import type { ReactNode } from "react";

type GlobalErrorProps = { readonly error: Error & { readonly digest?: string } };

/** Stands when even the frame of the pages fails, so it leans on nothing else. */
export default function GlobalError({ error }: GlobalErrorProps): ReactNode {
  return (
    <html lang="en-US">
      <body>
        <main>
          <h1>Dwellbook cannot show this page</h1>
          <p>
            Nothing was changed or lost. Load the page again; if it stays, tell whoever looks after this
            server
            {error.digest === undefined ? "" : ` and give them the number ${error.digest}`}.
          </p>
        </main>
      </body>
    </html>
  );
}
