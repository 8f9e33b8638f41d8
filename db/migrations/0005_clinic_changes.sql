CREATE TABLE `clinic_changes` (
	`id` text PRIMARY KEY NOT NULL,
	`act_id` text NOT NULL,
	`before` text NOT NULL,
	`after` text NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`act_id`) REFERENCES `acts`(`id`) ON UPDATE no action ON DELETE no action DEFERRABLE INITIALLY DEFERRED,
	CONSTRAINT "clinic_changes_before_is_json" CHECK(json_valid("clinic_changes"."before")),
	CONSTRAINT "clinic_changes_after_is_json" CHECK(json_valid("clinic_changes"."after"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `clinic_changes_by_time` ON `clinic_changes` (`at`);
--> statement-breakpoint
CREATE TRIGGER `clinic_changes_no_update` BEFORE UPDATE ON `clinic_changes` BEGIN
	SELECT RAISE(ABORT, 'clinic_changes is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `clinic_changes_no_delete` BEFORE DELETE ON `clinic_changes` BEGIN
	SELECT RAISE(ABORT, 'clinic_changes is append only');
END;
