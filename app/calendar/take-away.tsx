"use client";

import { type ReactNode, useState } from "react";
import { type Looked, Touched } from "#app/calendar/touched.tsx";
import { newActId } from "#app/ui/recording/act-id.ts";

/** The press stays what it was when the page was opened, also once the calendar behind it is another. */
export function TakeAway(props: Omit<Looked, "actId">): ReactNode {
  const [looked] = useState(() => ({ ...props, actId: newActId() }));
  return <Touched looked={looked} press="Take it away" back={<a href="/calendar">Leave it</a>} />;
}
