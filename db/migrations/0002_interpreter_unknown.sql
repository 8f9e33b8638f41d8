-- Foreign keys are off while migrations run (db/migrate.ts), so the table is rebuilt by dropping it.
CREATE TABLE `__new_patients` (
	`id` text PRIMARY KEY NOT NULL,
	`family_name` text NOT NULL,
	`given_name` text NOT NULL,
	`birth_on` text,
	`language` text NOT NULL,
	`needs_interpreter` integer,
	`contact` text NOT NULL,
	`search` text NOT NULL,
	`updated_at` integer NOT NULL,
	`withdrawn_at` integer,
	`joined_into` text,
	FOREIGN KEY (`joined_into`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "patients_joins_another" CHECK("__new_patients"."joined_into" is null or "__new_patients"."joined_into" <> "__new_patients"."id"),
	CONSTRAINT "patients_id_filled" CHECK(trim("__new_patients"."id") <> ''),
	CONSTRAINT "patients_family_name_filled" CHECK(trim("__new_patients"."family_name") <> ''),
	CONSTRAINT "patients_birth_on_is_day" CHECK("__new_patients"."birth_on" is date("__new_patients"."birth_on")),
	CONSTRAINT "patients_needs_interpreter_is_flag" CHECK("__new_patients"."needs_interpreter" in (0, 1)),
	CONSTRAINT "patients_contact_is_json" CHECK(json_valid("__new_patients"."contact"))
) STRICT;
--> statement-breakpoint
-- "No" was what stood in the form, folded away, before anybody was asked, and what a list without an answer was given: an old 0 does
-- not tell who was asked, so it is not known.
INSERT INTO `__new_patients`("id", "family_name", "given_name", "birth_on", "language", "needs_interpreter", "contact", "search", "updated_at", "withdrawn_at", "joined_into") SELECT "id", "family_name", "given_name", "birth_on", "language", nullif("needs_interpreter", 0), "contact", "search", "updated_at", "withdrawn_at", "joined_into" FROM `patients`;--> statement-breakpoint
DROP TABLE `patients`;--> statement-breakpoint
ALTER TABLE `__new_patients` RENAME TO `patients`;--> statement-breakpoint
CREATE INDEX `patients_by_name` ON `patients` (`family_name`,`given_name`,`id`);--> statement-breakpoint
CREATE INDEX `patients_by_service` ON `patients` (json_extract(`contact`, '$.responsibleService'),`id`) WHERE json_extract(`contact`, '$.responsibleService') is not null;
