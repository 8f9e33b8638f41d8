CREATE TABLE `shelf_types` (
	`id` text PRIMARY KEY NOT NULL,
	`sort` text NOT NULL,
	`name` text NOT NULL,
	`name_key` text NOT NULL,
	`facts` text NOT NULL,
	`in_use` integer NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "shelf_types_id_filled" CHECK(trim("shelf_types"."id") <> ''),
	CONSTRAINT "shelf_types_sort_filled" CHECK(trim("shelf_types"."sort") <> ''),
	CONSTRAINT "shelf_types_name_filled" CHECK(trim("shelf_types"."name") <> ''),
	CONSTRAINT "shelf_types_name_key_filled" CHECK(trim("shelf_types"."name_key") <> ''),
	CONSTRAINT "shelf_types_in_use_is_flag" CHECK("shelf_types"."in_use" in (0, 1)),
	CONSTRAINT "shelf_types_facts_is_json" CHECK(json_valid("shelf_types"."facts"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `shelf_types_one_name` ON `shelf_types` (`name_key`) WHERE "in_use" = 1;
--> statement-breakpoint
CREATE TABLE `shelf_changes` (
	`id` text PRIMARY KEY NOT NULL,
	`type_id` text NOT NULL,
	`act_id` text NOT NULL,
	`before` text,
	`after` text NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`type_id`) REFERENCES `shelf_types`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`act_id`) REFERENCES `acts`(`id`) ON UPDATE no action ON DELETE no action DEFERRABLE INITIALLY DEFERRED,
	CONSTRAINT "shelf_changes_before_is_json" CHECK(json_valid("shelf_changes"."before")),
	CONSTRAINT "shelf_changes_after_is_json" CHECK(json_valid("shelf_changes"."after"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `shelf_changes_by_act` ON `shelf_changes` (`act_id`);
--> statement-breakpoint
CREATE TRIGGER `shelf_changes_no_update` BEFORE UPDATE ON `shelf_changes` BEGIN
	SELECT RAISE(ABORT, 'shelf_changes is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `shelf_changes_no_delete` BEFORE DELETE ON `shelf_changes` BEGIN
	SELECT RAISE(ABORT, 'shelf_changes is append only');
END;
