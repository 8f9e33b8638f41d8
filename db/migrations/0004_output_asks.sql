-- Foreign keys are off while migrations run (db/migrate.ts), so the table is rebuilt by dropping it: what lists read stands before what is
-- long. Why the output of a tube asks for a review is not known of rows that stand; it is worked out when they are asked.
CREATE TABLE `__new_tubes` (
	`id` text PRIMARY KEY NOT NULL,
	`patient_id` text NOT NULL,
	`kind` text NOT NULL,
	`role` text NOT NULL,
	`side` text,
	`status` text NOT NULL,
	`name` text NOT NULL,
	`size_units` integer,
	`clock_earliest` text,
	`clock_latest` text,
	`planned_on` text,
	`met_until` integer,
	`plateau_since` text,
	`rules_version` integer NOT NULL,
	`strip` text NOT NULL,
	`state` text NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "tubes_clock_in_order" CHECK("__new_tubes"."clock_earliest" <= "__new_tubes"."clock_latest"),
	CONSTRAINT "tubes_size_positive" CHECK("__new_tubes"."size_units" > 0),
	CONSTRAINT "tubes_clock_earliest_is_day" CHECK("__new_tubes"."clock_earliest" is date("__new_tubes"."clock_earliest")),
	CONSTRAINT "tubes_clock_latest_is_day" CHECK("__new_tubes"."clock_latest" is date("__new_tubes"."clock_latest")),
	CONSTRAINT "tubes_planned_on_is_day" CHECK("__new_tubes"."planned_on" is date("__new_tubes"."planned_on")),
	CONSTRAINT "tubes_plateau_since_is_day" CHECK("__new_tubes"."plateau_since" is date("__new_tubes"."plateau_since")),
	CONSTRAINT "tubes_strip_is_json" CHECK(json_valid("__new_tubes"."strip")),
	CONSTRAINT "tubes_state_is_json" CHECK(json_valid("__new_tubes"."state"))
) STRICT;
--> statement-breakpoint
INSERT INTO `__new_tubes`("id", "patient_id", "kind", "role", "side", "status", "name", "size_units", "clock_earliest", "clock_latest", "planned_on", "met_until", "plateau_since", "rules_version", "strip", "state") SELECT "id", "patient_id", "kind", "role", "side", "status", "name", "size_units", "clock_earliest", "clock_latest", "planned_on", null, null, "rules_version", "strip", "state" FROM `tubes`;--> statement-breakpoint
DROP TABLE `tubes`;--> statement-breakpoint
ALTER TABLE `__new_tubes` RENAME TO `tubes`;--> statement-breakpoint
CREATE INDEX `tubes_by_patient` ON `tubes` (`patient_id`,`id`);--> statement-breakpoint
CREATE INDEX `tubes_by_status` ON `tubes` (`status`,`id`);--> statement-breakpoint
CREATE INDEX `tubes_by_what_they_are` ON `tubes` (`kind`,`side`,`role`,`status`,`patient_id`,`id`);--> statement-breakpoint
CREATE INDEX `tubes_by_what_output_asks` ON `tubes` (`rules_version`,`met_until`,`plateau_since`,`role`,`id`);--> statement-breakpoint
CREATE INDEX `tubes_by_planned_day` ON `tubes` (`planned_on`,`id`);--> statement-breakpoint
CREATE INDEX `open_steps_by_kind` ON `open_steps` (`kind`,`due_on`,`id`);