import type { ReactNode } from "react";
import { constantFrame, constantLines, constantToday } from "#app/bench/constant-lines.ts";
import { onlyInBench } from "#app/bench/only-in-bench.ts";
import { ExchangeTable } from "#app/exchanges/exchange-table.tsx";
import { StripKey } from "#app/strip/strip-key.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";

/** Exchanges with rows that nobody asked a database for: what drawing the page costs by itself. */
export default function ConstantExchangesPage(): ReactNode {
  onlyInBench();
  return (
    <PageFrame frame={constantFrame} heading="Which tubes come next?" here="Exchanges">
      <ExchangeTable today={constantToday} lines={constantLines} />
      <StripKey />
    </PageFrame>
  );
}
