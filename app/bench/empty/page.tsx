import type { ReactNode } from "react";
import { onlyInBench } from "#app/bench/only-in-bench.ts";

/** What a page of the framework loads when there is nothing on it. */
export default function EmptyPage(): ReactNode {
  onlyInBench();
  return <main>Nothing.</main>;
}
