"use client";

import type { ReactNode } from "react";
import { PlainPage } from "#app/ui/plain-page.tsx";

type ErrorPageProps = { readonly error: Error & { readonly digest?: string }; readonly retry: () => void };

export default function ErrorPage({ error, retry }: ErrorPageProps): ReactNode {
  return (
    <PlainPage heading="This page could not be made">
      <p>
        Nothing was changed or lost. Try again; if it stays, tell whoever looks after this server
        {error.digest === undefined ? "" : ` and give them the number ${error.digest}`}.
      </p>
      <p>
        <button type="button" onClick={retry}>
          Try again
        </button>
      </p>
      <p>
        <a href="/">Go to Today</a>
      </p>
    </PlainPage>
  );
}
