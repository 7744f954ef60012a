-- Distances, services, bikes and riders. Rows that were written down by mistake are kept: withdrawn with a
-- reason, and nothing reads them any more.

ALTER TABLE wheel ADD COLUMN serial TEXT NOT NULL DEFAULT '';
ALTER TABLE wheel ADD COLUMN over_locknut_mm REAL CHECK (over_locknut_mm BETWEEN 80 AND 220);
ALTER TABLE wheel ADD COLUMN axle TEXT NOT NULL DEFAULT '';
-- rim centre from the midplane of the locknut faces, towards the drive side
ALTER TABLE wheel ADD COLUMN rim_offset_wanted_mm REAL CHECK (rim_offset_wanted_mm BETWEEN -30 AND 30);
-- ISO 5775 designation, e.g. 40-622
ALTER TABLE wheel ADD COLUMN tyre_etrto TEXT;
-- teeth of each sprocket, smallest first
ALTER TABLE wheel ADD COLUMN cassette TEXT CHECK (cassette IS NULL OR json_type(cassette) = 'array');
-- nothing was fitted on it before; NULL = not written down, nothing is refused
ALTER TABLE wheel ADD COLUMN exists_from_ms INTEGER;
ALTER TABLE wheel ADD COLUMN row_version INTEGER NOT NULL DEFAULT 1;

-- A withdrawn period stays readable and gives its time free.
ALTER TABLE fitted_period ADD COLUMN withdrawn_ms INTEGER;
ALTER TABLE fitted_period ADD COLUMN withdrawn_reason TEXT;
DROP INDEX fitted_period_one_open;
CREATE UNIQUE INDEX fitted_period_one_open ON fitted_period (wheel_id)
	WHERE until_ms IS NULL AND withdrawn_ms IS NULL;
DROP TRIGGER fitted_period_no_overlap_new;
DROP TRIGGER fitted_period_no_overlap_changed;
CREATE TRIGGER fitted_period_no_overlap_new BEFORE INSERT ON fitted_period
WHEN NEW.withdrawn_ms IS NULL AND EXISTS (
	SELECT 1 FROM fitted_period p WHERE p.wheel_id = NEW.wheel_id AND p.withdrawn_ms IS NULL
	AND p.from_ms < coalesce(NEW.until_ms, 9e15) AND NEW.from_ms < coalesce(p.until_ms, 9e15))
BEGIN SELECT raise(ABORT, 'fitted periods of a wheel overlap'); END;
CREATE TRIGGER fitted_period_no_overlap_changed BEFORE UPDATE ON fitted_period
WHEN NEW.withdrawn_ms IS NULL AND EXISTS (
	SELECT 1 FROM fitted_period p WHERE p.wheel_id = NEW.wheel_id AND p.id <> NEW.id
	AND p.withdrawn_ms IS NULL
	AND p.from_ms < coalesce(NEW.until_ms, 9e15) AND NEW.from_ms < coalesce(p.until_ms, 9e15))
BEGIN SELECT raise(ABORT, 'fitted periods of a wheel overlap'); END;

-- What a counter on the bike showed: a check, never a source of distance.
CREATE TABLE odometer_reading (
	id INTEGER PRIMARY KEY,
	wheel_id INTEGER NOT NULL REFERENCES wheel,
	at_ms INTEGER NOT NULL,
	reading_m REAL NOT NULL CHECK (reading_m >= 0 AND reading_m <= 1e9),
	note TEXT NOT NULL DEFAULT '',
	by_id INTEGER NOT NULL REFERENCES person,
	created_ms INTEGER NOT NULL,
	withdrawn_ms INTEGER,
	withdrawn_reason TEXT,
	CHECK ((withdrawn_ms IS NULL) = (withdrawn_reason IS NULL))
) STRICT;
CREATE INDEX odometer_reading_by_wheel ON odometer_reading (wheel_id, at_ms);

-- The hub was opened or cleaned: a clock of its own.
CREATE TABLE service (
	id INTEGER PRIMARY KEY,
	wheel_id INTEGER NOT NULL REFERENCES wheel,
	at_ms INTEGER NOT NULL,
	opened INTEGER NOT NULL CHECK (opened IN (0, 1)),
	cleaned INTEGER NOT NULL CHECK (cleaned IN (0, 1)),
	lubricant TEXT NOT NULL DEFAULT '',
	amount_g REAL CHECK (amount_g > 0 AND amount_g <= 200),
	-- which parts were turned over or moved round, in words; '' = none
	parts_turned TEXT NOT NULL DEFAULT '',
	note TEXT NOT NULL DEFAULT '',
	by_id INTEGER NOT NULL REFERENCES person,
	created_ms INTEGER NOT NULL,
	withdrawn_ms INTEGER,
	withdrawn_reason TEXT,
	CHECK ((withdrawn_ms IS NULL) = (withdrawn_reason IS NULL))
) STRICT;
CREATE INDEX service_by_wheel ON service (wheel_id, at_ms);

-- Ridden without a recording: age and wear, never observed.
CREATE TABLE unlogged_distance (
	id INTEGER PRIMARY KEY,
	wheel_id INTEGER NOT NULL REFERENCES wheel,
	at_ms INTEGER NOT NULL,
	distance_m REAL NOT NULL CHECK (distance_m > 0 AND distance_m <= 1e8),
	note TEXT NOT NULL DEFAULT '',
	by_id INTEGER NOT NULL REFERENCES person,
	created_ms INTEGER NOT NULL,
	withdrawn_ms INTEGER,
	withdrawn_reason TEXT,
	CHECK ((withdrawn_ms IS NULL) = (withdrawn_reason IS NULL))
) STRICT;
CREATE INDEX unlogged_distance_by_wheel ON unlogged_distance (wheel_id, at_ms);

CREATE TABLE bike (
	id INTEGER PRIMARY KEY,
	name TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length(name) BETWEEN 1 AND 120),
	-- teeth, smallest first; NULL = not stated
	chainrings TEXT CHECK (chainrings IS NULL OR json_type(chainrings) = 'array'),
	cassette TEXT CHECK (cassette IS NULL OR json_type(cassette) = 'array'),
	-- rolled circumference of the driven tyre where the wheel that is on it states none
	circumference_m REAL CHECK (circumference_m BETWEEN 0.5 AND 4),
	-- NULL = not said
	speed_sensor TEXT CHECK (speed_sensor IN ('rear hub', 'front hub', 'GPS')),
	power_from TEXT CHECK (power_from IN ('crank', 'pedals', 'one side doubled', 'hub', 'none')),
	motor INTEGER CHECK (motor IN (0, 1)),
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	row_version INTEGER NOT NULL DEFAULT 1,
	created_ms INTEGER NOT NULL
) STRICT;

-- Which wheel was on which bike: from <= instant < until. A wheel is on one bike, a bike has one rear wheel.
CREATE TABLE wheel_on_bike (
	id INTEGER PRIMARY KEY,
	wheel_id INTEGER NOT NULL REFERENCES wheel,
	bike_id INTEGER NOT NULL REFERENCES bike,
	from_ms INTEGER NOT NULL,
	until_ms INTEGER CHECK (until_ms > from_ms),
	-- wheel circumference that the bike's recording device was set to; NULL = not known
	device_circumference_m REAL CHECK (device_circumference_m BETWEEN 0.5 AND 4),
	created_ms INTEGER NOT NULL,
	withdrawn_ms INTEGER,
	withdrawn_reason TEXT,
	CHECK ((withdrawn_ms IS NULL) = (withdrawn_reason IS NULL))
) STRICT;
CREATE INDEX wheel_on_bike_by_wheel ON wheel_on_bike (wheel_id, from_ms);
CREATE INDEX wheel_on_bike_by_bike ON wheel_on_bike (bike_id, from_ms);
CREATE TRIGGER wheel_on_bike_no_overlap_new BEFORE INSERT ON wheel_on_bike
WHEN NEW.withdrawn_ms IS NULL AND EXISTS (
	SELECT 1 FROM wheel_on_bike p WHERE (p.wheel_id = NEW.wheel_id OR p.bike_id = NEW.bike_id)
	AND p.withdrawn_ms IS NULL
	AND p.from_ms < coalesce(NEW.until_ms, 9e15) AND NEW.from_ms < coalesce(p.until_ms, 9e15))
BEGIN SELECT raise(ABORT, 'a wheel is on one bike at a time, a bike has one rear wheel'); END;
CREATE TRIGGER wheel_on_bike_no_overlap_changed BEFORE UPDATE ON wheel_on_bike
WHEN NEW.withdrawn_ms IS NULL AND EXISTS (
	SELECT 1 FROM wheel_on_bike p WHERE (p.wheel_id = NEW.wheel_id OR p.bike_id = NEW.bike_id)
	AND p.id <> NEW.id AND p.withdrawn_ms IS NULL
	AND p.from_ms < coalesce(NEW.until_ms, 9e15) AND NEW.from_ms < coalesce(p.until_ms, 9e15))
BEGIN SELECT raise(ABORT, 'a wheel is on one bike at a time, a bike has one rear wheel'); END;

-- Facts about people stand in their table and nowhere else.
ALTER TABLE person ADD COLUMN weight_kg REAL CHECK (weight_kg BETWEEN 20 AND 250);
ALTER TABLE person ADD COLUMN anonymised_ms INTEGER;
ALTER TABLE person ADD COLUMN row_version INTEGER NOT NULL DEFAULT 1;

-- What distances are made of is evidence (see 0002). Odometer readings only check and are not.
CREATE TRIGGER evidence_service_added AFTER INSERT ON service
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_service_changed AFTER UPDATE ON service
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_service_removed AFTER DELETE ON service
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_unlogged_distance_added AFTER INSERT ON unlogged_distance
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_unlogged_distance_changed AFTER UPDATE ON unlogged_distance
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_unlogged_distance_removed AFTER DELETE ON unlogged_distance
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_bike_added AFTER INSERT ON bike
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_bike_changed AFTER UPDATE ON bike
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_bike_removed AFTER DELETE ON bike
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_wheel_on_bike_added AFTER INSERT ON wheel_on_bike
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_wheel_on_bike_changed AFTER UPDATE ON wheel_on_bike
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_wheel_on_bike_removed AFTER DELETE ON wheel_on_bike
BEGIN UPDATE evidence SET changes = changes + 1; END;
