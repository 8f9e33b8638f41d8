import { patientsWithOpenProposals } from "#db/queries/proposals.ts";
import type { Tx } from "#db/transaction.ts";
import { movedEverywhere, type Tables } from "#server/dates/moved-everywhere.ts";
import { writeProposals } from "#server/dates/repropose.ts";

/**
 * After a new version: what it would move is proposed of everybody, and what an older one proposed and this one would not is no longer.
 * Nothing moves. Returns of how many tubes something is proposed.
 */
export function proposeEverywhere(tx: Tx, tables: Tables): number {
  const newest = { protocol: tables.protocol.version, calendar: tables.calendar.version };
  const moved = [...movedEverywhere(tx, tables)];
  const touched = new Set(moved.map(({ patientId }) => patientId));
  for (const { steps, ...of } of moved) writeProposals(tx, of, { steps, newest });
  for (const patientId of patientsWithOpenProposals(tx).filter((id) => !touched.has(id)))
    writeProposals(tx, { patientId, tubes: [] }, { steps: [], newest });
  return new Set(moved.flatMap(({ steps }) => steps.map(({ tubeId }) => tubeId))).size;
}
