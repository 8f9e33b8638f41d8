-- How one person looks at the lists. Mutable: nothing of a patient stands here, and whose it is may change it at any time.
CREATE TABLE `own_orders` (
	`staff_id` text NOT NULL,
	`list` text NOT NULL,
	`step_id` text NOT NULL,
	`place` integer NOT NULL,
	PRIMARY KEY(`staff_id`, `list`, `step_id`),
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "own_orders_list_filled" CHECK(trim("own_orders"."list") <> ''),
	CONSTRAINT "own_orders_place_counts" CHECK("own_orders"."place" >= 0)
) STRICT;
--> statement-breakpoint
CREATE INDEX `own_orders_in_order` ON `own_orders` (`staff_id`,`list`,`place`);
--> statement-breakpoint
CREATE TABLE `saved_filters` (
	`id` text PRIMARY KEY NOT NULL,
	`staff_id` text NOT NULL,
	`list` text NOT NULL,
	`name` text NOT NULL,
	`name_key` text NOT NULL,
	`filter` text NOT NULL,
	`saved_at` integer NOT NULL,
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "saved_filters_list_filled" CHECK(trim("saved_filters"."list") <> ''),
	CONSTRAINT "saved_filters_name_filled" CHECK(trim("saved_filters"."name") <> ''),
	CONSTRAINT "saved_filters_filter_is_json" CHECK(json_valid("saved_filters"."filter"))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `saved_filters_by_name` ON `saved_filters` (`staff_id`,`name_key`);
