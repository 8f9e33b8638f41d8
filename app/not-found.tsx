import type { ReactNode } from "react";
import { PlainPage } from "#app/ui/plain-page.tsx";

export default function NotFound(): ReactNode {
  return (
    <PlainPage heading="There is no such page">
      <p>
        Nothing in this book has that address. Check the address, or look the patient up by name or number.
      </p>
      <p>
        <a href="/">Go to Today</a>
      </p>
    </PlainPage>
  );
}
