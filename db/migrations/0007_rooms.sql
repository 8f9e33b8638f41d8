CREATE TABLE `room_versions` (
	`version` integer PRIMARY KEY NOT NULL,
	`content` text NOT NULL,
	`created_at` integer NOT NULL,
	CONSTRAINT "room_versions_start_at_1" CHECK("room_versions"."version" >= 1),
	CONSTRAINT "room_versions_content_is_json" CHECK(json_valid("room_versions"."content"))
) STRICT;
--> statement-breakpoint
CREATE TRIGGER `room_versions_no_update` BEFORE UPDATE ON `room_versions` BEGIN
	SELECT RAISE(ABORT, 'room_versions is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `room_versions_no_delete` BEFORE DELETE ON `room_versions` BEGIN
	SELECT RAISE(ABORT, 'room_versions is append only');
END;
