CREATE TABLE `patient_states` (
	`patient_id` text PRIMARY KEY NOT NULL,
	`state` text NOT NULL,
	`rules_version` integer NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "patient_states_state_is_json" CHECK(json_valid("patient_states"."state"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `protocol_draft` (
	`id` integer PRIMARY KEY NOT NULL,
	`base` integer NOT NULL,
	`revision` integer NOT NULL,
	`rows` text NOT NULL,
	`note` text NOT NULL,
	`authors` text NOT NULL,
	`updated_at` integer NOT NULL,
	FOREIGN KEY (`base`) REFERENCES `protocol_versions`(`version`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "protocol_draft_is_one" CHECK("protocol_draft"."id" = 1),
	CONSTRAINT "protocol_draft_rows_is_json" CHECK(json_valid("protocol_draft"."rows")),
	CONSTRAINT "protocol_draft_authors_is_json" CHECK(json_valid("protocol_draft"."authors"))
) STRICT;
--> statement-breakpoint
ALTER TABLE `protocol_versions` ADD COLUMN `drafted_by` text CONSTRAINT "protocol_versions_drafted_by_is_json" CHECK(json_valid("drafted_by"));
--> statement-breakpoint
ALTER TABLE `protocol_versions` ADD COLUMN `approved_alone` integer CONSTRAINT "protocol_versions_approved_alone_is_flag" CHECK("approved_alone" in (0, 1));
