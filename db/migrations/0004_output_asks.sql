-- Why a tube's output asks for a review before its day. Of rows that stand from before it is worked out when they are asked, until their patient is computed again.
ALTER TABLE `tubes` ADD COLUMN `met_until` integer;--> statement-breakpoint
ALTER TABLE `tubes` ADD COLUMN `plateau_since` text CONSTRAINT "tubes_plateau_since_is_day" CHECK("plateau_since" is date("plateau_since"));
