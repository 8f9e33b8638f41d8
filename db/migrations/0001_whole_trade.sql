CREATE TABLE `sheet_batches` (
	`act_id` text PRIMARY KEY NOT NULL,
	`file_name` text NOT NULL,
	`rows_in_sheet` integer NOT NULL,
	FOREIGN KEY (`act_id`) REFERENCES `acts`(`id`) ON UPDATE no action ON DELETE no action DEFERRABLE INITIALLY DEFERRED,
	CONSTRAINT "sheet_batches_rows_counted" CHECK("sheet_batches"."rows_in_sheet" >= 0),
	CONSTRAINT "sheet_batches_file_name_filled" CHECK(trim("sheet_batches"."file_name") <> '')
) STRICT;
--> statement-breakpoint
CREATE TABLE `sheet_columns` (
	`heading` text PRIMARY KEY NOT NULL,
	`field` text NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "sheet_columns_heading_filled" CHECK(trim("sheet_columns"."heading") <> ''),
	CONSTRAINT "sheet_columns_field_filled" CHECK(trim("sheet_columns"."field") <> '')
) STRICT;
--> statement-breakpoint
CREATE TABLE `sheet_rows` (
	`act_id` text NOT NULL,
	`row` integer NOT NULL,
	`digest` text NOT NULL,
	`patient_id` text NOT NULL,
	`tube_id` text NOT NULL,
	`typed` text NOT NULL,
	PRIMARY KEY(`act_id`, `row`),
	FOREIGN KEY (`act_id`) REFERENCES `acts`(`id`) ON UPDATE no action ON DELETE no action DEFERRABLE INITIALLY DEFERRED,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "sheet_rows_typed_is_json" CHECK(json_valid("sheet_rows"."typed")),
	CONSTRAINT "sheet_rows_digest_filled" CHECK(trim("sheet_rows"."digest") <> ''),
	CONSTRAINT "sheet_rows_tube_id_filled" CHECK(trim("sheet_rows"."tube_id") <> '')
) STRICT;
--> statement-breakpoint
CREATE INDEX `sheet_rows_by_digest` ON `sheet_rows` (`digest`,`tube_id`);--> statement-breakpoint
CREATE TABLE `sheets` (
	`id` text PRIMARY KEY NOT NULL,
	`staff_id` text NOT NULL,
	`file_name` text NOT NULL,
	`cells` text NOT NULL,
	`answers` text NOT NULL,
	`touched_at` integer NOT NULL,
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "sheets_id_filled" CHECK(trim("sheets"."id") <> ''),
	CONSTRAINT "sheets_file_name_filled" CHECK(trim("sheets"."file_name") <> ''),
	CONSTRAINT "sheets_cells_is_json" CHECK(json_valid("sheets"."cells")),
	CONSTRAINT "sheets_answers_is_json" CHECK(json_valid("sheets"."answers"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `sheets_touched_at` ON `sheets` (`touched_at`);--> statement-breakpoint
CREATE INDEX `patient_changes_by_act` ON `patient_changes` (`act_id`);--> statement-breakpoint
CREATE INDEX `patients_by_service` ON `patients` (json_extract(`contact`, '$.responsibleService'),`id`) WHERE json_extract(`contact`, '$.responsibleService') is not null;--> statement-breakpoint
CREATE INDEX `tubes_by_what_they_are` ON `tubes` (`kind`,`side`,`role`,`status`,`patient_id`,`id`);--> statement-breakpoint
ALTER TABLE `patients` ADD COLUMN `withdrawn_at` integer;--> statement-breakpoint
ALTER TABLE `patients` ADD COLUMN `joined_into` text REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict CONSTRAINT "patients_joins_another" CHECK("joined_into" is null or "joined_into" <> "id");
--> statement-breakpoint
CREATE TRIGGER `sheet_batches_no_update` BEFORE UPDATE ON `sheet_batches` BEGIN
	SELECT RAISE(ABORT, 'sheet_batches is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `sheet_batches_no_delete` BEFORE DELETE ON `sheet_batches` BEGIN
	SELECT RAISE(ABORT, 'sheet_batches is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `sheet_rows_no_update` BEFORE UPDATE ON `sheet_rows` BEGIN
	SELECT RAISE(ABORT, 'sheet_rows is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `sheet_rows_no_delete` BEFORE DELETE ON `sheet_rows` BEGIN
	SELECT RAISE(ABORT, 'sheet_rows is append only');
END;
--> statement-breakpoint
-- The finder compares words of letters and digits alone, with a blank before and after each, and finds by telephone too. Names stand
-- in lower case without accents already; shared/record/patient/search-text.ts writes the same from now on.
UPDATE `patients` SET `search` = ' '
	|| replace(replace(replace(replace(replace(replace(replace(replace(replace(
		replace(replace(replace(replace(replace(replace(replace(`search`, '-', ''), '''', ''), '’', ''), '.', ''), ',', ''), '/', ''), '_', ''),
		'ß', 'ss'), 'æ', 'ae'), 'œ', 'oe'), 'ø', 'o'), 'ł', 'l'), 'đ', 'd'), 'ð', 'd'), 'þ', 'th'), 'ı', 'i')
	|| ' '
	|| coalesce((
		SELECT group_concat(ltrim(
			lower(replace(replace(replace(replace(replace(`value`, ' ', ''), '-', ''), '.', ''), '/', ''), '_', '')), '0'), ' ') || ' '
		FROM `patient_identifiers` WHERE `patient_id` = `patients`.`id`), '')
	|| coalesce((
		SELECT group_concat('t' || ltrim(
			replace(replace(replace(replace(replace(replace(replace(`number`, ' ', ''), '-', ''), '.', ''), '/', ''), '(', ''), ')', ''), '+', ''),
			'0'), ' ') || ' '
		FROM (
			SELECT json_extract(`value`, '$.number') AS `number` FROM json_each(`patients`.`contact`, '$.telephones')
			UNION ALL
			SELECT json_extract(`patients`.`contact`, '$.alternate.telephone')
		) WHERE `number` IS NOT NULL), '');
