import { setClockOffset } from "#db/queries/clinic.ts";
import { allStaff } from "#db/queries/staff.ts";
import { inTransaction } from "#db/transaction.ts";
import { inventedShelf } from "#seed-demo/shelf.ts";
import { instantOf, setClock, type Teller } from "#seed-demo/tell.ts";
import { newId } from "#server/ids.ts";
import { addToShelf } from "#server/shelf/add-to-shelf.ts";

/** Some days before the demo begins. */
const STOCKED = { daysAgo: 30, at: "08:00" };

/** Puts the invented shelf up, each type by its form. */
export function stockShelf(teller: Teller): void {
  const lead = allStaff(teller.db).find(({ role }) => role === "lead");
  if (lead === undefined) throw new Error("nobody is lead");
  const instant = instantOf(teller, STOCKED);
  inTransaction(teller.db, (tx) => {
    setClock(tx, instant);
    for (const texts of inventedShelf) addToShelf({ db: tx, staff: lead }, { actId: newId(), texts });
    setClockOffset(tx, 0);
  });
}
