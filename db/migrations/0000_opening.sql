CREATE TABLE `acts` (
	`id` text PRIMARY KEY NOT NULL,
	`staff_id` text NOT NULL,
	`command` text NOT NULL,
	`input_hash` text NOT NULL,
	`result` text NOT NULL,
	`recorded_at` integer NOT NULL,
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "acts_id_filled" CHECK(trim("acts"."id") <> ''),
	CONSTRAINT "acts_command_filled" CHECK(trim("acts"."command") <> ''),
	CONSTRAINT "acts_input_hash_filled" CHECK(trim("acts"."input_hash") <> ''),
	CONSTRAINT "acts_result_is_json" CHECK(json_valid("acts"."result"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `acts_recorded_at` ON `acts` (`recorded_at`);--> statement-breakpoint
CREATE TABLE `clinic` (
	`id` integer PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`zone` text NOT NULL,
	`phone` text NOT NULL,
	`is_demo` integer NOT NULL,
	`clock_offset_ms` integer DEFAULT 0 NOT NULL,
	CONSTRAINT "clinic_one_row" CHECK("clinic"."id" = 1),
	CONSTRAINT "clinic_real_clock" CHECK("clinic"."is_demo" = 1 or "clinic"."clock_offset_ms" = 0),
	CONSTRAINT "clinic_name_filled" CHECK(trim("clinic"."name") <> ''),
	CONSTRAINT "clinic_zone_filled" CHECK(trim("clinic"."zone") <> ''),
	CONSTRAINT "clinic_is_demo_is_flag" CHECK("clinic"."is_demo" in (0, 1))
) STRICT;
--> statement-breakpoint
CREATE TABLE `drafts` (
	`staff_id` text NOT NULL,
	`form` text NOT NULL,
	`subject` text NOT NULL,
	`content` text NOT NULL,
	`saved_at` integer NOT NULL,
	PRIMARY KEY(`staff_id`, `form`, `subject`),
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "drafts_form_filled" CHECK(trim("drafts"."form") <> ''),
	CONSTRAINT "drafts_content_is_json" CHECK(json_valid("drafts"."content"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `drafts_saved_at` ON `drafts` (`saved_at`);--> statement-breakpoint
CREATE TABLE `event_kinds` (
	`kind` text PRIMARY KEY NOT NULL,
	CONSTRAINT "event_kinds_kind_filled" CHECK(trim("event_kinds"."kind") <> '')
) STRICT;
--> statement-breakpoint
CREATE TABLE `event_tubes` (
	`event_id` text NOT NULL,
	`tube_id` text NOT NULL,
	PRIMARY KEY(`event_id`, `tube_id`),
	FOREIGN KEY (`event_id`) REFERENCES `events`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `event_tubes_by_tube` ON `event_tubes` (`tube_id`,`event_id`);--> statement-breakpoint
CREATE TABLE `events` (
	`id` text PRIMARY KEY NOT NULL,
	`patient_id` text NOT NULL,
	`seq` integer NOT NULL,
	`act_id` text NOT NULL,
	`kind` text NOT NULL,
	`payload_version` integer NOT NULL,
	`payload` text NOT NULL,
	`precision` text NOT NULL,
	`occurred_earliest` text,
	`occurred_latest` text,
	`occurred_at` integer,
	`zone` text NOT NULL,
	`day_sequence` integer DEFAULT 0 NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	`amends` text,
	`pins_protocol` integer,
	`pins_calendar` integer,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`act_id`) REFERENCES `acts`(`id`) ON UPDATE no action ON DELETE no action DEFERRABLE INITIALLY DEFERRED,
	FOREIGN KEY (`kind`) REFERENCES `event_kinds`(`kind`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`recorded_by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`amends`) REFERENCES `events`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`pins_protocol`) REFERENCES `protocol_versions`(`version`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`pins_calendar`) REFERENCES `calendar_versions`(`version`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "events_seq_starts_at_1" CHECK("events"."seq" >= 1),
	CONSTRAINT "events_payload_version_starts_at_1" CHECK("events"."payload_version" >= 1),
	CONSTRAINT "events_precision_known" CHECK("events"."precision" in ('day', 'month', 'year', 'span', 'unknown')),
	CONSTRAINT "events_span_whole" CHECK(("events"."precision" = 'unknown') = ("events"."occurred_earliest" is null) and ("events"."occurred_earliest" is null) = ("events"."occurred_latest" is null)),
	CONSTRAINT "events_span_in_order" CHECK("events"."occurred_earliest" is null or "events"."occurred_earliest" <= "events"."occurred_latest"),
	CONSTRAINT "events_day_is_one_day" CHECK("events"."precision" <> 'day' or "events"."occurred_earliest" = "events"."occurred_latest"),
	CONSTRAINT "events_amends_another" CHECK("events"."amends" is null or "events"."amends" <> "events"."id"),
	CONSTRAINT "events_occurred_earliest_is_day" CHECK("events"."occurred_earliest" is date("events"."occurred_earliest")),
	CONSTRAINT "events_occurred_latest_is_day" CHECK("events"."occurred_latest" is date("events"."occurred_latest")),
	CONSTRAINT "events_payload_is_json" CHECK(json_valid("events"."payload")),
	CONSTRAINT "events_id_filled" CHECK(trim("events"."id") <> ''),
	CONSTRAINT "events_zone_filled" CHECK(trim("events"."zone") <> '')
) STRICT;
--> statement-breakpoint
CREATE INDEX `events_by_act` ON `events` (`act_id`);--> statement-breakpoint
CREATE INDEX `events_by_amended` ON `events` (`amends`);--> statement-breakpoint
CREATE UNIQUE INDEX `events_one_place_in_stream` ON `events` (`patient_id`,`seq`);--> statement-breakpoint
CREATE TABLE `patient_changes` (
	`id` text PRIMARY KEY NOT NULL,
	`patient_id` text NOT NULL,
	`act_id` text NOT NULL,
	`before` text,
	`after` text NOT NULL,
	`at` integer NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`act_id`) REFERENCES `acts`(`id`) ON UPDATE no action ON DELETE no action DEFERRABLE INITIALLY DEFERRED,
	CONSTRAINT "patient_changes_before_is_json" CHECK(json_valid("patient_changes"."before")),
	CONSTRAINT "patient_changes_after_is_json" CHECK(json_valid("patient_changes"."after"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `patient_changes_by_patient` ON `patient_changes` (`patient_id`,`at`);--> statement-breakpoint
CREATE TABLE `patient_identifiers` (
	`patient_id` text NOT NULL,
	`place` integer NOT NULL,
	`issuer` text NOT NULL,
	`value` text NOT NULL,
	PRIMARY KEY(`patient_id`, `place`),
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "patient_identifiers_place_known" CHECK("patient_identifiers"."place" in (1, 2)),
	CONSTRAINT "patient_identifiers_issuer_filled" CHECK(trim("patient_identifiers"."issuer") <> ''),
	CONSTRAINT "patient_identifiers_value_filled" CHECK(trim("patient_identifiers"."value") <> '')
) STRICT;
--> statement-breakpoint
CREATE INDEX `patient_identifiers_by_value` ON `patient_identifiers` (`value`);--> statement-breakpoint
CREATE UNIQUE INDEX `patient_identifiers_one_owner` ON `patient_identifiers` (`issuer`,`value`);--> statement-breakpoint
CREATE TABLE `patients` (
	`id` text PRIMARY KEY NOT NULL,
	`family_name` text NOT NULL,
	`given_name` text NOT NULL,
	`birth_on` text,
	`language` text NOT NULL,
	`needs_interpreter` integer NOT NULL,
	`contact` text NOT NULL,
	`search` text NOT NULL,
	`updated_at` integer NOT NULL,
	CONSTRAINT "patients_id_filled" CHECK(trim("patients"."id") <> ''),
	CONSTRAINT "patients_family_name_filled" CHECK(trim("patients"."family_name") <> ''),
	CONSTRAINT "patients_birth_on_is_day" CHECK("patients"."birth_on" is date("patients"."birth_on")),
	CONSTRAINT "patients_needs_interpreter_is_flag" CHECK("patients"."needs_interpreter" in (0, 1)),
	CONSTRAINT "patients_contact_is_json" CHECK(json_valid("patients"."contact"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `patients_by_name` ON `patients` (`family_name`,`given_name`,`id`);--> statement-breakpoint
CREATE TABLE `open_steps` (
	`id` text PRIMARY KEY NOT NULL,
	`patient_id` text NOT NULL,
	`tube_id` text,
	`kind` text NOT NULL,
	`rank` integer NOT NULL,
	`earliest_on` text,
	`target_on` text,
	`latest_on` text,
	`due_on` text NOT NULL,
	`provisional` integer NOT NULL,
	`owner_role` text NOT NULL,
	`owner_staff_id` text,
	`owner_from` text,
	`escalates_on` text,
	`physician_on` text,
	`why` text NOT NULL,
	`pins_protocol` integer,
	`pins_calendar` integer,
	`rules_version` integer NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`tube_id`) REFERENCES `tubes`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`owner_staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`pins_protocol`) REFERENCES `protocol_versions`(`version`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`pins_calendar`) REFERENCES `calendar_versions`(`version`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "open_steps_owner_role_known" CHECK("open_steps"."owner_role" in ('nurse', 'caller', 'physician', 'lead')),
	CONSTRAINT "open_steps_earliest_on_is_day" CHECK("open_steps"."earliest_on" is date("open_steps"."earliest_on")),
	CONSTRAINT "open_steps_target_on_is_day" CHECK("open_steps"."target_on" is date("open_steps"."target_on")),
	CONSTRAINT "open_steps_latest_on_is_day" CHECK("open_steps"."latest_on" is date("open_steps"."latest_on")),
	CONSTRAINT "open_steps_due_on_is_day" CHECK("open_steps"."due_on" is date("open_steps"."due_on")),
	CONSTRAINT "open_steps_owner_from_is_day" CHECK("open_steps"."owner_from" is date("open_steps"."owner_from")),
	CONSTRAINT "open_steps_escalates_on_is_day" CHECK("open_steps"."escalates_on" is date("open_steps"."escalates_on")),
	CONSTRAINT "open_steps_physician_on_is_day" CHECK("open_steps"."physician_on" is date("open_steps"."physician_on")),
	CONSTRAINT "open_steps_provisional_is_flag" CHECK("open_steps"."provisional" in (0, 1)),
	CONSTRAINT "open_steps_why_is_json" CHECK(json_valid("open_steps"."why"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `open_steps_due_list` ON `open_steps` (`rank`,`due_on`,`id`);--> statement-breakpoint
CREATE INDEX `open_steps_past_latest` ON `open_steps` (`rank`,`latest_on`,`id`);--> statement-breakpoint
CREATE INDEX `open_steps_by_patient` ON `open_steps` (`patient_id`,`due_on`,`rank`,`id`);--> statement-breakpoint
CREATE INDEX `open_steps_by_tube` ON `open_steps` (`tube_id`,`due_on`,`rank`,`id`);--> statement-breakpoint
CREATE INDEX `open_steps_by_owner` ON `open_steps` (`owner_staff_id`);--> statement-breakpoint
CREATE TABLE `proposals` (
	`id` text PRIMARY KEY NOT NULL,
	`patient_id` text NOT NULL,
	`tube_id` text NOT NULL,
	`step_kind` text NOT NULL,
	`stood` text NOT NULL,
	`proposed` text NOT NULL,
	`cause` text NOT NULL,
	`created_at` integer NOT NULL,
	`settled_by_event` text,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`settled_by_event`) REFERENCES `events`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "proposals_stood_is_json" CHECK(json_valid("proposals"."stood")),
	CONSTRAINT "proposals_proposed_is_json" CHECK(json_valid("proposals"."proposed"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `proposals_unsettled` ON `proposals` (`patient_id`) WHERE "proposals"."settled_by_event" is null;--> statement-breakpoint
CREATE TABLE `tubes` (
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
	`strip` text NOT NULL,
	`state` text NOT NULL,
	`rules_version` integer NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "tubes_clock_in_order" CHECK("tubes"."clock_earliest" <= "tubes"."clock_latest"),
	CONSTRAINT "tubes_size_positive" CHECK("tubes"."size_units" > 0),
	CONSTRAINT "tubes_clock_earliest_is_day" CHECK("tubes"."clock_earliest" is date("tubes"."clock_earliest")),
	CONSTRAINT "tubes_clock_latest_is_day" CHECK("tubes"."clock_latest" is date("tubes"."clock_latest")),
	CONSTRAINT "tubes_planned_on_is_day" CHECK("tubes"."planned_on" is date("tubes"."planned_on")),
	CONSTRAINT "tubes_strip_is_json" CHECK(json_valid("tubes"."strip")),
	CONSTRAINT "tubes_state_is_json" CHECK(json_valid("tubes"."state"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `tubes_by_patient` ON `tubes` (`patient_id`,`id`);--> statement-breakpoint
CREATE INDEX `tubes_by_status` ON `tubes` (`status`,`id`);--> statement-breakpoint
CREATE INDEX `tubes_by_planned_day` ON `tubes` (`planned_on`,`id`);--> statement-breakpoint
CREATE TABLE `readings` (
	`id` text PRIMARY KEY NOT NULL,
	`patient_id` text NOT NULL,
	`tube_id` text NOT NULL,
	`act_id` text NOT NULL,
	`from_at` integer,
	`to_at` integer NOT NULL,
	`zone` text NOT NULL,
	`gross_ul` integer,
	`basis` text NOT NULL,
	`flush_given_ul` integer,
	`payload` text NOT NULL,
	`replaces` text,
	`voided` integer NOT NULL,
	`recorded_at` integer NOT NULL,
	`recorded_by` text NOT NULL,
	FOREIGN KEY (`patient_id`) REFERENCES `patients`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`act_id`) REFERENCES `acts`(`id`) ON UPDATE no action ON DELETE no action DEFERRABLE INITIALLY DEFERRED,
	FOREIGN KEY (`replaces`) REFERENCES `readings`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`recorded_by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "readings_interval_in_order" CHECK("readings"."from_at" is null or "readings"."from_at" < "readings"."to_at"),
	CONSTRAINT "readings_flush_not_negative" CHECK("readings"."flush_given_ul" is null or "readings"."flush_given_ul" >= 0),
	CONSTRAINT "readings_void_names_one" CHECK("readings"."voided" = 0 or "readings"."replaces" is not null),
	CONSTRAINT "readings_replaces_another" CHECK("readings"."replaces" is null or "readings"."replaces" <> "readings"."id"),
	CONSTRAINT "readings_id_filled" CHECK(trim("readings"."id") <> ''),
	CONSTRAINT "readings_tube_id_filled" CHECK(trim("readings"."tube_id") <> ''),
	CONSTRAINT "readings_zone_filled" CHECK(trim("readings"."zone") <> ''),
	CONSTRAINT "readings_basis_filled" CHECK(trim("readings"."basis") <> ''),
	CONSTRAINT "readings_voided_is_flag" CHECK("readings"."voided" in (0, 1)),
	CONSTRAINT "readings_payload_is_json" CHECK(json_valid("readings"."payload"))
) STRICT;
--> statement-breakpoint
CREATE INDEX `readings_by_tube` ON `readings` (`tube_id`,`to_at`);--> statement-breakpoint
CREATE INDEX `readings_by_act` ON `readings` (`act_id`);--> statement-breakpoint
CREATE INDEX `readings_by_replaced` ON `readings` (`replaces`);--> statement-breakpoint
CREATE TABLE `reads` (
	`id` integer PRIMARY KEY NOT NULL,
	`at` integer NOT NULL,
	`staff_id` text NOT NULL,
	`procedure` text NOT NULL,
	`subject_kind` text NOT NULL,
	`subject_id` text NOT NULL,
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "reads_procedure_filled" CHECK(trim("reads"."procedure") <> ''),
	CONSTRAINT "reads_subject_kind_filled" CHECK(trim("reads"."subject_kind") <> '')
) STRICT;
--> statement-breakpoint
CREATE INDEX `reads_by_subject` ON `reads` (`subject_kind`,`subject_id`,`at`);--> statement-breakpoint
CREATE INDEX `reads_by_time` ON `reads` (`at`);--> statement-breakpoint
CREATE TABLE `sessions` (
	`token_hash` text PRIMARY KEY NOT NULL,
	`staff_id` text NOT NULL,
	`created_at` integer NOT NULL,
	`last_seen_at` integer NOT NULL,
	`ends_at` integer NOT NULL,
	FOREIGN KEY (`staff_id`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "sessions_end_after_start" CHECK("sessions"."ends_at" > "sessions"."created_at")
) STRICT;
--> statement-breakpoint
CREATE INDEX `sessions_ends_at` ON `sessions` (`ends_at`);--> statement-breakpoint
CREATE TABLE `sign_in_refusals` (
	`key` text PRIMARY KEY NOT NULL,
	`failures` integer NOT NULL,
	`last_failure_at` integer NOT NULL,
	`refused_until` integer,
	CONSTRAINT "sign_in_refusals_key_known" CHECK("sign_in_refusals"."key" like 'account:%' or "sign_in_refusals"."key" like 'address:%'),
	CONSTRAINT "sign_in_refusals_failures_counted" CHECK("sign_in_refusals"."failures" > 0)
) STRICT;
--> statement-breakpoint
CREATE TABLE `staff` (
	`id` text PRIMARY KEY NOT NULL,
	`user_name` text NOT NULL,
	`full_name` text NOT NULL,
	`role` text NOT NULL,
	`is_approver` integer NOT NULL,
	`password_hash` text NOT NULL,
	`created_at` integer NOT NULL,
	`closed_at` integer,
	CONSTRAINT "staff_role_known" CHECK("staff"."role" in ('nurse', 'caller', 'physician', 'lead')),
	CONSTRAINT "staff_approver_is_physician" CHECK("staff"."is_approver" = 0 or "staff"."role" = 'physician'),
	CONSTRAINT "staff_user_name_lower" CHECK("staff"."user_name" = lower("staff"."user_name")),
	CONSTRAINT "staff_user_name_filled" CHECK(trim("staff"."user_name") <> ''),
	CONSTRAINT "staff_full_name_filled" CHECK(trim("staff"."full_name") <> ''),
	CONSTRAINT "staff_is_approver_is_flag" CHECK("staff"."is_approver" in (0, 1))
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `staff_user_name_unique` ON `staff` (`user_name`);--> statement-breakpoint
CREATE TABLE `calendar_versions` (
	`version` integer PRIMARY KEY NOT NULL,
	`content` text NOT NULL,
	`created_at` integer NOT NULL,
	CONSTRAINT "calendar_versions_start_at_1" CHECK("calendar_versions"."version" >= 1),
	CONSTRAINT "calendar_versions_content_is_json" CHECK(json_valid("calendar_versions"."content"))
) STRICT;
--> statement-breakpoint
CREATE TABLE `protocol_versions` (
	`version` integer PRIMARY KEY NOT NULL,
	`rows` text NOT NULL,
	`note` text NOT NULL,
	`approved_by` text,
	`approved_on` text,
	`created_at` integer NOT NULL,
	FOREIGN KEY (`approved_by`) REFERENCES `staff`(`id`) ON UPDATE no action ON DELETE restrict,
	CONSTRAINT "protocol_versions_start_at_1" CHECK("protocol_versions"."version" >= 1),
	CONSTRAINT "protocol_versions_approval_whole" CHECK(("protocol_versions"."approved_by" is null) = ("protocol_versions"."approved_on" is null)),
	CONSTRAINT "protocol_versions_approved_on_is_day" CHECK("protocol_versions"."approved_on" is date("protocol_versions"."approved_on")),
	CONSTRAINT "protocol_versions_rows_is_json" CHECK(json_valid("protocol_versions"."rows"))
) STRICT;
--> statement-breakpoint
-- By hand from here on: what the generator does not know. STRICT and DEFERRABLE above are by hand, too.
PRAGMA application_id = 1146569291;
--> statement-breakpoint
CREATE TRIGGER `acts_no_update` BEFORE UPDATE ON `acts` BEGIN
	SELECT RAISE(ABORT, 'acts is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `acts_no_delete` BEFORE DELETE ON `acts` BEGIN
	SELECT RAISE(ABORT, 'acts is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `patient_changes_no_update` BEFORE UPDATE ON `patient_changes` BEGIN
	SELECT RAISE(ABORT, 'patient_changes is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `patient_changes_no_delete` BEFORE DELETE ON `patient_changes` BEGIN
	SELECT RAISE(ABORT, 'patient_changes is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `protocol_versions_no_update` BEFORE UPDATE ON `protocol_versions` BEGIN
	SELECT RAISE(ABORT, 'protocol_versions is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `protocol_versions_no_delete` BEFORE DELETE ON `protocol_versions` BEGIN
	SELECT RAISE(ABORT, 'protocol_versions is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `calendar_versions_no_update` BEFORE UPDATE ON `calendar_versions` BEGIN
	SELECT RAISE(ABORT, 'calendar_versions is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `calendar_versions_no_delete` BEFORE DELETE ON `calendar_versions` BEGIN
	SELECT RAISE(ABORT, 'calendar_versions is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `events_no_update` BEFORE UPDATE ON `events` BEGIN
	SELECT RAISE(ABORT, 'events is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `events_no_delete` BEFORE DELETE ON `events` BEGIN
	SELECT RAISE(ABORT, 'events is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `event_tubes_no_update` BEFORE UPDATE ON `event_tubes` BEGIN
	SELECT RAISE(ABORT, 'event_tubes is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `event_tubes_no_delete` BEFORE DELETE ON `event_tubes` BEGIN
	SELECT RAISE(ABORT, 'event_tubes is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `readings_no_update` BEFORE UPDATE ON `readings` BEGIN
	SELECT RAISE(ABORT, 'readings is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `readings_no_delete` BEFORE DELETE ON `readings` BEGIN
	SELECT RAISE(ABORT, 'readings is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `reads_no_update` BEFORE UPDATE ON `reads` BEGIN
	SELECT RAISE(ABORT, 'reads is append only');
END;
--> statement-breakpoint
CREATE TRIGGER `reads_no_delete` BEFORE DELETE ON `reads` BEGIN
	SELECT RAISE(ABORT, 'reads is append only');
END;
