import ICAL from "ical.js";

/** The events of a calendar file as another library reads them. */
export const readCalendar = (file: string) =>
  new ICAL.Component(ICAL.parse(file) as unknown[]).getAllSubcomponents("vevent").map((found) => {
    const event = new ICAL.Event(found);
    return {
      uid: event.uid,
      sequence: event.sequence,
      summary: event.summary,
      location: event.location,
      start: event.startDate.toJSDate().toISOString(),
      /** `2026-11-11T09:30:00Z`, or of a day without a time `2026-11-11`. */
      startText: event.startDate.toString(),
      zone: event.startDate.zone.tzid,
      minutes: event.duration.toSeconds() / 60,
      status: found.getFirstPropertyValue("status"),
      stamp: String(found.getFirstPropertyValue("dtstamp")),
      changed: String(found.getFirstPropertyValue("last-modified")),
    };
  });
