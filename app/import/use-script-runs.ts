import { useEffect, useState } from "react";

/** Whether the page's script runs: a form sent before would go by its address, with what was typed in it. */
export function useScriptRuns(): boolean {
  const [runs, setRuns] = useState(false);
  useEffect(() => setRuns(true), []);
  return runs;
}
