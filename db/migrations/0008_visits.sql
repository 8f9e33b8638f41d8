CREATE TABLE `next_visits` (
	`tube_id` text PRIMARY KEY NOT NULL,
	`patient_id` text NOT NULL,
	`visit_id` text NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`visit_id`) REFERENCES `visits`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `next_visits_by_patient` ON `next_visits` (`patient_id`,`tube_id`);
--> statement-breakpoint
CREATE TABLE `visits` (
	`id` text PRIMARY KEY NOT NULL,
	`patient_id` text NOT NULL,
	`state` text NOT NULL,
	`visit_on` text NOT NULL,
	`room_id` text,
	`from_minute` integer,
	`minutes` integer,
	`takes_room` integer NOT NULL,
	`urgent` integer NOT NULL,
	`settle_by` text,
	`visit` text NOT NULL,
	`rules_version` integer NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "visits_state_known" CHECK("visits"."state" in ('proposed', 'booked', 'confirmed', 'arrived', 'done', 'did not attend', 'cancelled')),
	CONSTRAINT "visits_room_whole" CHECK(("visits"."room_id" is null) = ("visits"."minutes" is null)),
	CONSTRAINT "visits_takes_a_room" CHECK("visits"."takes_room" = 0 or ("visits"."room_id" is not null and "visits"."from_minute" is not null)),
	CONSTRAINT "visits_minutes_of_a_day" CHECK("visits"."from_minute" between 0 and 1440 and "visits"."minutes" between 1 and 1440),
	CONSTRAINT "visits_visit_on_is_day" CHECK("visits"."visit_on" is date("visits"."visit_on")),
	CONSTRAINT "visits_settle_by_is_day" CHECK("visits"."settle_by" is date("visits"."settle_by")),
	CONSTRAINT "visits_takes_room_is_flag" CHECK("visits"."takes_room" in (0, 1)),
	CONSTRAINT "visits_urgent_is_flag" CHECK("visits"."urgent" in (0, 1)),
	CONSTRAINT "visits_visit_is_json" CHECK(json_valid("visits"."visit"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `visits_by_day` ON `visits` (`visit_on`,`from_minute`,`id`);
--> statement-breakpoint
CREATE INDEX `visits_by_patient` ON `visits` (`patient_id`,`id`);
--> statement-breakpoint
CREATE INDEX `visits_by_state` ON `visits` (`state`,`visit_on`,`id`);
--> statement-breakpoint
-- Kept from before visits were: folded from the events again when it is asked for, and written with the patient's next entry.
DELETE FROM `patient_states`;
