import { clinicView } from "#server/clinic-view.ts";
import { database } from "#server/database.ts";

/** For the page on which nobody is signed in yet. */
export const clinicName = (): string => clinicView(database()).name;
