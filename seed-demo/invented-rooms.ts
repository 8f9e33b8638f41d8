import type { Weekday } from "#shared/day/day.ts";
import type { Minute, Room } from "#shared/visit/room.ts";

const at = (hour: number, minute = 0): Minute => hour * 60 + minute;

const staffed = (weekdays: readonly Weekday[], from: Minute, to: Minute): Room["hours"] =>
  weekdays.map((weekday) => ({ weekday, from, to }));

/** What the invented clinic has when it begins. Told by ids that stay, so that what is booked there names the same room. */
export const inventedRooms: readonly Room[] = [
  {
    id: "room-1",
    name: "Room 1",
    can: ["fluoroscopy", "ultrasound", "sedation", "isolation"],
    hours: staffed([1, 2, 3, 4, 5], at(8), at(16)),
    reserve: 60,
  },
  {
    id: "room-2",
    name: "Room 2",
    can: ["fluoroscopy", "ultrasound"],
    hours: staffed([1, 3, 4], at(8, 30), at(13)),
    reserve: 0,
  },
  {
    id: "treatment-room",
    name: "Treatment room",
    can: ["ultrasound"],
    hours: staffed([2, 5], at(13), at(16, 30)),
    reserve: 0,
  },
];
