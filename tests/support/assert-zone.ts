/**
 * A zone project proves nothing when the runner drops its zone. Minutes behind UTC in January and July 2026, as
 * Date#getTimezoneOffset tells them (IANA time zone database).
 */
const minutesBehind: Record<string, readonly [number, number]> = {
  UTC: [0, 0],
  "America/Los_Angeles": [480, 420],
  "Pacific/Kiritimati": [-840, -840],
  "America/Santiago": [180, 240],
};

const expected = minutesBehind[process.env.TZ ?? ""];
const seen = [new Date("2026-01-15T12:00:00Z"), new Date("2026-07-15T12:00:00Z")].map((date) =>
  date.getTimezoneOffset(),
);

if (expected === undefined || expected[0] !== seen[0] || expected[1] !== seen[1]) {
  throw new Error(`This worker runs at ${seen.join(" and ")} minutes behind UTC, not in ${process.env.TZ}.`);
}
