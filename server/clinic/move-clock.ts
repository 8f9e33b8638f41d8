import { clinicOf, setClockOffset } from "#db/queries/clinic.ts";
import type { Database } from "#db/sqlite.ts";
import { inTransaction } from "#db/transaction.ts";
import { DomainError } from "#shared/errors/refusal.ts";

const DAY_MS = 86_400_000;

/**
 * Moves a demo's clock so many days of 24 hours on from where it stands; `real` takes it back to the machine's. Sessions go by the
 * machine's clock, so nobody is signed out. Refuses a clinic that is no demo (`clock-not-demo`).
 */
export function moveClock(db: Database, by: number | "real"): void {
  inTransaction(db, (tx) => {
    const { isDemo, clockOffsetMs } = clinicOf(tx);
    if (!isDemo) throw new DomainError({ code: "clock-not-demo" });
    setClockOffset(tx, by === "real" ? 0 : clockOffsetMs + by * DAY_MS);
  });
}
