import type { ReactNode } from "react";
import { BOOK_VISIT_ID } from "#app/ui/book-visit-id.ts";
import { Now } from "#app/ui/now.tsx";
import { bookingHref, visitHref } from "#app/visit/visit-pages.ts";
import type { PatientTubes } from "#shared/tube/state.ts";
import { isOpenVisit, type Visit } from "#shared/visit/visit.ts";
import { capital } from "#shared/words/capital.ts";
import { slotPhrase, visitStateWords } from "#shared/words/visit-events.ts";
import styles from "./visit.module.css";

type VisitsOfProps = {
  readonly patientId: string;
  readonly state: Pick<PatientTubes, "visits" | "tubes">;
  /** The tube that the page is about; null on the patient's own. */
  readonly tubeId: string | null;
  /** False where the page itself offers slots. */
  readonly offers?: boolean;
};

const isOf = ({ tubes }: Visit, tubeId: string | null): boolean =>
  tubeId === null || tubes.some((one) => one.tubeId === tubeId);

/** Open, or over so lately that it is asked about: the last one. */
function shownOf(visits: readonly Visit[], tubeId: string | null): readonly Visit[] {
  const own = visits.filter((visit) => isOf(visit, tubeId));
  const open = own.filter(isOpenVisit);
  return open.length > 0 ? open : own.slice(-1);
}

/** The visits that stand, and the way to three slots: a key away, also from a call. */
export function VisitsOf({ patientId, state, tubeId, offers = true }: VisitsOfProps): ReactNode {
  const shown = shownOf(state.visits, tubeId);
  const inCare = state.tubes.some(
    ({ id, status }) => status !== "ended" && (tubeId === null || id === tubeId),
  );
  if (shown.length === 0 && !(inCare && offers)) return null;
  return (
    <p className={styles.visits}>
      {shown.map((visit) => (
        <span key={visit.id}>
          <a href={visitHref(patientId, visit.id)}>
            {visit.place.kind === "elsewhere" ? "Visit elsewhere" : "Visit"} {slotPhrase(visit)}
          </a>
          : {visit.urgent && isOpenVisit(visit) && <Now>urgent, </Now>}
          {visitStateWords[visit.state]}.{" "}
        </span>
      ))}
      {inCare && offers && (
        <a id={BOOK_VISIT_ID} href={bookingHref(patientId, tubeId ?? undefined)} data-screen-only>
          {capital(shown.some(isOpenVisit) ? "book another visit" : "book a visit: three slots")}
        </a>
      )}
    </p>
  );
}
