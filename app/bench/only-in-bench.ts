import { notFound } from "next/navigation";

/**
 * Pages to measure against hold nothing of a clinic and ask for no sign-in. Only a server that `npm run bench` starts, with
 * DWELLBOOK_BENCH=1, has them; every other one says that there is no such page. Each page asks for itself: a layout that refuses would
 * still send what is inside it.
 */
export function onlyInBench(): void {
  if (process.env.DWELLBOOK_BENCH !== "1") notFound();
}
