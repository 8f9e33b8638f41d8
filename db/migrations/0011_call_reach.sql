-- Best times by the patient's own clock. None until a patient is computed again: then they order nothing, and stand as they were typed.
CREATE TABLE `__new_call_lines` (
	`patient_id` text PRIMARY KEY NOT NULL,
	`due_on` text NOT NULL,
	`flag_pending` integer NOT NULL,
	`in_trial` integer NOT NULL,
	`first_hours_until` text,
	`latest_on` text,
	`attempts_left` integer NOT NULL,
	`next_time` text,
	`next_part` text,
	`lives_in` text,
	`best` text DEFAULT '[]' NOT NULL,
	`rules_version` integer NOT NULL,
	`line` text NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "call_lines_next_time_is_time" CHECK("__new_call_lines"."next_time" glob '[0-2][0-9]:[0-5][0-9]'),
	CONSTRAINT "call_lines_next_part_known" CHECK("__new_call_lines"."next_part" in ('morning', 'afternoon', 'evening')),
	CONSTRAINT "call_lines_attempts_counted" CHECK("__new_call_lines"."attempts_left" >= 0),
	CONSTRAINT "call_lines_due_on_is_day" CHECK("__new_call_lines"."due_on" is date("__new_call_lines"."due_on")),
	CONSTRAINT "call_lines_first_hours_until_is_day" CHECK("__new_call_lines"."first_hours_until" is date("__new_call_lines"."first_hours_until")),
	CONSTRAINT "call_lines_latest_on_is_day" CHECK("__new_call_lines"."latest_on" is date("__new_call_lines"."latest_on")),
	CONSTRAINT "call_lines_flag_pending_is_flag" CHECK("__new_call_lines"."flag_pending" in (0, 1)),
	CONSTRAINT "call_lines_in_trial_is_flag" CHECK("__new_call_lines"."in_trial" in (0, 1)),
	CONSTRAINT "call_lines_line_is_json" CHECK(json_valid("__new_call_lines"."line")),
	CONSTRAINT "call_lines_best_is_json" CHECK(json_valid("__new_call_lines"."best"))
) STRICT;
--> statement-breakpoint
INSERT INTO `__new_call_lines`("patient_id", "due_on", "flag_pending", "in_trial", "first_hours_until", "latest_on", "attempts_left", "next_time", "next_part", "rules_version", "line") SELECT "patient_id", "due_on", "flag_pending", "in_trial", "first_hours_until", "latest_on", "attempts_left", "next_time", "next_part", "rules_version", "line" FROM `call_lines`;--> statement-breakpoint
DROP TABLE `call_lines`;--> statement-breakpoint
ALTER TABLE `__new_call_lines` RENAME TO `call_lines`;--> statement-breakpoint
CREATE INDEX `call_lines_elsewhere` ON `call_lines` (`lives_in`) WHERE "lives_in" is not null;--> statement-breakpoint
CREATE INDEX `call_lines_due` ON `call_lines` (`due_on`,`flag_pending`,`in_trial`,`first_hours_until`,`latest_on`,`attempts_left`,`next_time`,`next_part`,`lives_in`,`best`,`patient_id`);
