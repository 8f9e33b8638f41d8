import { setImmediate } from "node:timers/promises";
import { snapshotOf } from "#db/snapshot.ts";
import { exportPieces } from "#server/export/export-part.ts";
import type { ExportPart } from "#shared/words/exports.ts";

/** Begun when it is first read from: a snapshot that nobody reads would stay open. */
function* piecesOf(database: string, part: ExportPart): Generator<Uint8Array> {
  const db = snapshotOf(database);
  try {
    yield* exportPieces(db, part);
  } finally {
    db.sqlite.close();
  }
}

/** One file of an export as the reader takes it, from the database file as it stands when the reading begins. */
export function exportStream(database: string, part: ExportPart): ReadableStream<Uint8Array> {
  const pieces = piecesOf(database, part);
  return new ReadableStream({
    async pull(controller) {
      // Others have their turn between two pieces.
      await setImmediate();
      const next = pieces.next();
      if (next.done) controller.close();
      else controller.enqueue(next.value);
    },
    cancel() {
      pieces.return(undefined);
    },
  });
}
