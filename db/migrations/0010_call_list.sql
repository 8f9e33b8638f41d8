-- Who rings a patient now. Mutable: a hold ends with the call, and nothing of the record stands here.
CREATE TABLE `call_holds` (
	`patient_id` text PRIMARY KEY NOT NULL,
	`staff_id` text NOT NULL,
	`since_at` integer NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE TABLE `call_lines` (
	`patient_id` text PRIMARY KEY NOT NULL,
	`due_on` text NOT NULL,
	`flag_pending` integer NOT NULL,
	`in_trial` integer NOT NULL,
	`first_hours_until` text,
	`latest_on` text,
	`attempts_left` integer NOT NULL,
	`next_time` text,
	`next_part` text,
	`rules_version` integer NOT NULL,
	`line` text NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "call_lines_next_time_is_time" CHECK("call_lines"."next_time" glob '[0-2][0-9]:[0-5][0-9]'),
	CONSTRAINT "call_lines_next_part_known" CHECK("call_lines"."next_part" in ('morning', 'afternoon', 'evening')),
	CONSTRAINT "call_lines_attempts_counted" CHECK("call_lines"."attempts_left" >= 0),
	CONSTRAINT "call_lines_due_on_is_day" CHECK("call_lines"."due_on" is date("call_lines"."due_on")),
	CONSTRAINT "call_lines_first_hours_until_is_day" CHECK("call_lines"."first_hours_until" is date("call_lines"."first_hours_until")),
	CONSTRAINT "call_lines_latest_on_is_day" CHECK("call_lines"."latest_on" is date("call_lines"."latest_on")),
	CONSTRAINT "call_lines_flag_pending_is_flag" CHECK("call_lines"."flag_pending" in (0, 1)),
	CONSTRAINT "call_lines_in_trial_is_flag" CHECK("call_lines"."in_trial" in (0, 1)),
	CONSTRAINT "call_lines_line_is_json" CHECK(json_valid("call_lines"."line"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `call_lines_due` ON `call_lines` (`due_on`,`flag_pending`,`in_trial`,`first_hours_until`,`latest_on`,`attempts_left`,`next_time`,`next_part`,`patient_id`);
--> statement-breakpoint
-- Nobody whom an open step asks to ring is missing until the patient is computed again: what the steps of older rules say, with one attempt
-- left, since the versions stored with them have no row for attempts.
INSERT INTO `call_lines`
SELECT
	step.`patient_id`,
	min(step.`due_on`),
	0,
	EXISTS (
		SELECT 1 FROM `tubes`
		WHERE `tubes`.`patient_id` = step.`patient_id` AND `tubes`.`status` = 'in' AND `tubes`.`state` ->> '$.trial.state' = 'running'
	),
	NULL,
	min(step.`latest_on`),
	1,
	NULL,
	NULL,
	min(step.`rules_version`),
	'{"next":null,"tries":[],"trials":[]}'
FROM `open_steps` step
WHERE step.`kind` IN ('alarm', 'call', 'clamp trial', 'ask again', 'whereabouts')
GROUP BY step.`patient_id`;
