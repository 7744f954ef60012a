-- What a person says of a ride. NULL = not said. The trail holds who said it.
ALTER TABLE ride ADD COLUMN bike_id INTEGER REFERENCES bike;
ALTER TABLE ride ADD COLUMN surface TEXT CHECK (surface IN
	('tarmac', 'cobbles', 'gravel road', 'forest track', 'narrow trail', 'mixed'));
-- luggage or trailer, without rider and bike
ALTER TABLE ride ADD COLUMN load_kg REAL CHECK (load_kg BETWEEN 0 AND 300);
-- a person's word on motor assistance; motor_assisted is the file's
ALTER TABLE ride ADD COLUMN motor_said INTEGER CHECK (motor_said IN (0, 1));
CREATE INDEX ride_by_bike ON ride (bike_id);

-- Where a person split a ride at a change of build: an instant within the ride.
CREATE TABLE ride_cut (
	ride_id INTEGER NOT NULL REFERENCES ride,
	at_ms INTEGER NOT NULL,
	actor_id INTEGER NOT NULL REFERENCES person,
	said_ms INTEGER NOT NULL,
	PRIMARY KEY (ride_id, at_ms)
) STRICT, WITHOUT ROWID;

-- What each part of a split ride amounts to, by one version of the analysis. Parts add up to the result.
CREATE TABLE ride_part (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	-- 0 = up to the first cut
	part INTEGER NOT NULL,
	-- seconds and metres from the start of the ride
	from_s REAL NOT NULL,
	to_s REAL NOT NULL CHECK (to_s >= from_s),
	from_m REAL NOT NULL,
	total_m REAL NOT NULL CHECK (total_m >= 0),
	observed_m REAL NOT NULL CHECK (observed_m >= 0),
	driven_m REAL NOT NULL CHECK (driven_m >= 0),
	PRIMARY KEY (ride_id, version, part),
	FOREIGN KEY (ride_id, version) REFERENCES result ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Answers given to many rides at once, so that they can be taken back at once.
CREATE TABLE answer_batch (
	id INTEGER PRIMARY KEY,
	actor_id INTEGER NOT NULL REFERENCES person,
	at_ms INTEGER NOT NULL,
	-- what was asked
	question TEXT NOT NULL,
	undone_by INTEGER REFERENCES person,
	undone_ms INTEGER,
	CHECK ((undone_by IS NULL) = (undone_ms IS NULL))
) STRICT;
CREATE TABLE answer_batch_change (
	batch_id INTEGER NOT NULL REFERENCES answer_batch,
	ride_id INTEGER NOT NULL REFERENCES ride ON DELETE CASCADE,
	answer TEXT NOT NULL,
	-- JSON values as they stood in the row
	before TEXT NOT NULL CHECK (json_valid(before)),
	after TEXT NOT NULL CHECK (json_valid(after)),
	PRIMARY KEY (batch_id, ride_id, answer)
) STRICT, WITHOUT ROWID;

-- Cuts and parts are evidence (see 0002); changed facts of a ride are changes of ride.
CREATE TRIGGER evidence_ride_cut_added AFTER INSERT ON ride_cut
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_ride_cut_changed AFTER UPDATE ON ride_cut
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_ride_cut_removed AFTER DELETE ON ride_cut
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_ride_part_added AFTER INSERT ON ride_part
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_ride_part_changed AFTER UPDATE ON ride_part
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_ride_part_removed AFTER DELETE ON ride_part
BEGIN UPDATE evidence SET changes = changes + 1; END;
