import type { ReactNode } from "react";
import { refusalSentence } from "#shared/words/refusals.ts";

/** Stands in a form's place for somebody whose role may not record this. */
export function NotForYou({ back }: { readonly back: string }): ReactNode {
  return (
    <p>
      {refusalSentence({ code: "not-allowed" })} <a href={back}>Go back</a>
    </p>
  );
}
