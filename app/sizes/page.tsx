import type { Metadata } from "next";
import type { ReactNode } from "react";
import { signedIn } from "#app/_trpc/server.ts";
import { FactList, type FactRow } from "#app/facts/fact-list.tsx";
import { Convert } from "#app/sizes/convert.tsx";
import styles from "#app/sizes/sizes.module.css";
import { WhatPasses } from "#app/sizes/what-passes.tsx";
import { type Column, DataTable } from "#app/ui/data-table.tsx";
import { ExampleMark } from "#app/ui/example-mark.tsx";
import { PageFrame } from "#app/ui/page-frame.tsx";
import { printDay } from "#shared/day/print-day.ts";
import { MEASURED_DRAINS_SOURCE, measuredDrains } from "#shared/fit/measured-drains.ts";
import { passageRowsOf } from "#shared/fit/tube-in-place.ts";
import type { Protocol } from "#shared/protocol/protocol.ts";
import { sourceLines } from "#shared/protocol/sources.ts";
import type { Length } from "#shared/size/length.ts";
import { printBoth, printLength } from "#shared/size/print-length.ts";

export const metadata: Metadata = { title: "Sizes - Dwellbook" };

/** Any chain of things, and any size in every unit: asked of no patient, computed on the page. */
export default async function SizesPage(): Promise<ReactNode> {
  const { api, frame } = await signedIn();
  const { protocol } = await api.protocol.view();
  const { passage } = protocol;
  const { types } = await api.shelf.view();
  return (
    <PageFrame
      frame={frame}
      heading="What passes through what?"
      lede="Of no patient, and nothing is kept"
      here="Clinic's books"
    >
      <Convert />
      {/* No patient, so no row of a kind: the rows are those for adults. */}
      <WhatPasses rows={passageRowsOf({ found: "no row" }, passage)} shelf={types} />
      <RowsUsed protocol={protocol} />
      <section className={styles.measured}>
        <DataTable
          caption="Drains measured on a bench"
          columns={drainColumns}
          rows={measuredDrains}
          keyOf={({ outside }) => String(outside)}
          none="None was measured."
        />
        <p className={styles.source}>
          Means over eight makers, water on a bench: {MEASURED_DRAINS_SOURCE}. Bores overlap between sizes, so
          these answer for no tube, and no flow is computed from a bore.
        </p>
      </section>
    </PageFrame>
  );
}

const drainColumns: readonly Column<(typeof measuredDrains)[number]>[] = [
  { head: "Size", cell: ({ outside }) => printLength(outside, "F") },
  { head: "Mean bore", figure: true, cell: ({ meanBore }) => printBoth(meanBore, "mm", "in") },
  { head: "Flow measured", figure: true, cell: ({ flowMlPerMin }) => `${flowMlPerMin} mL/min` },
];

/** The rows that a measured inside is judged by, each with its source. */
function RowsUsed({ protocol }: { readonly protocol: Protocol }): ReactNode {
  const { version, approved, passage } = protocol;
  const says = (length: Length | null): string =>
    length === null ? "no row" : length === 0 ? "none" : printBoth(length, "in", "mm");
  const { wire, device, source } = passage.outsideTolerance;
  const rows: readonly FactRow[] = [
    { word: "Clearance", says: `${says(passage.clearance)} (source ${passage.source})` },
    { word: "Tolerance of an inside", says: `${says(passage.boreTolerance)} (source ${passage.source})` },
    { word: "Tolerance of a wire", says: `${says(wire)} (source ${source})` },
    { word: "Of any other outside", says: `${says(device)} (source ${source})` },
  ];
  return (
    <section className={styles.section}>
      <h2>Rows used {approved === null && <ExampleMark />}</h2>
      <p>
        The clinic's protocol, version {version}
        {approved === null
          ? ", approved by nobody"
          : `, approved by ${approved.by} on ${printDay(approved.on)}`}
        ; for adults. A tolerance counts where none is typed.
      </p>
      <FactList rows={rows} />
      <ul className={styles.source}>
        {[...new Set([...sourceLines(passage.source), ...sourceLines(source)])].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </section>
  );
}
