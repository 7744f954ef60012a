-- Instants are milliseconds since 1970 UTC (..._ms); lengths metres; truth values 0 and 1.

CREATE TABLE setting (
	name TEXT PRIMARY KEY,
	value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The one table that names people; everywhere else stand ids, on pages codes.
CREATE TABLE person (
	id INTEGER PRIMARY KEY,
	name TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length(name) BETWEEN 1 AND 80),
	code TEXT NOT NULL UNIQUE,
	role TEXT NOT NULL CHECK (role IN ('owner', 'engineer', 'rider')),
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	created_ms INTEGER NOT NULL
) STRICT;

-- Who did what to which row, and what it was before. Never changed.
CREATE TABLE trail (
	id INTEGER PRIMARY KEY,
	at_ms INTEGER NOT NULL,
	actor_id INTEGER NOT NULL REFERENCES person,
	action TEXT NOT NULL,
	subject TEXT NOT NULL,
	subject_id TEXT NOT NULL,
	detail TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(detail))
) STRICT;
CREATE INDEX trail_by_subject ON trail (subject, subject_id);
CREATE TRIGGER trail_is_not_changed BEFORE UPDATE ON trail
BEGIN SELECT raise(ABORT, 'the trail is never changed'); END;
CREATE TRIGGER trail_is_not_removed BEFORE DELETE ON trail
BEGIN SELECT raise(ABORT, 'the trail is never removed'); END;

CREATE TABLE wheel (
	id INTEGER PRIMARY KEY,
	name TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length(name) BETWEEN 1 AND 120),
	hub TEXT NOT NULL,
	circumference_m REAL CHECK (circumference_m BETWEEN 0.5 AND 4),
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	created_ms INTEGER NOT NULL
) STRICT;

CREATE TABLE build (
	id INTEGER PRIMARY KEY,
	name TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (length(name) BETWEEN 1 AND 120),
	description TEXT NOT NULL,
	state TEXT NOT NULL DEFAULT 'draft'
		CHECK (state IN ('draft', 'bench-checked', 'in test', 'released', 'withdrawn')),
	-- hub degrees between two points of engagement
	step_hub_deg REAL CHECK (step_hub_deg > 0 AND step_hub_deg <= 120),
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	created_ms INTEGER NOT NULL
) STRICT;

-- When a build was on a wheel: from <= instant < until. No overlaps on one wheel.
CREATE TABLE fitted_period (
	id INTEGER PRIMARY KEY,
	wheel_id INTEGER NOT NULL REFERENCES wheel,
	build_id INTEGER NOT NULL REFERENCES build,
	from_ms INTEGER NOT NULL,
	until_ms INTEGER CHECK (until_ms > from_ms),
	created_ms INTEGER NOT NULL
) STRICT;
CREATE INDEX fitted_period_by_wheel ON fitted_period (wheel_id, from_ms);
CREATE INDEX fitted_period_by_build ON fitted_period (build_id);
CREATE UNIQUE INDEX fitted_period_one_open ON fitted_period (wheel_id) WHERE until_ms IS NULL;
CREATE TRIGGER fitted_period_no_overlap_new BEFORE INSERT ON fitted_period
WHEN EXISTS (
	SELECT 1 FROM fitted_period p WHERE p.wheel_id = NEW.wheel_id
	AND p.from_ms < coalesce(NEW.until_ms, 9e15) AND NEW.from_ms < coalesce(p.until_ms, 9e15))
BEGIN SELECT raise(ABORT, 'fitted periods of a wheel overlap'); END;
CREATE TRIGGER fitted_period_no_overlap_changed BEFORE UPDATE ON fitted_period
WHEN EXISTS (
	SELECT 1 FROM fitted_period p WHERE p.wheel_id = NEW.wheel_id AND p.id <> NEW.id
	AND p.from_ms < coalesce(NEW.until_ms, 9e15) AND NEW.from_ms < coalesce(p.until_ms, 9e15))
BEGIN SELECT raise(ABORT, 'fitted periods of a wheel overlap'); END;

-- Each uploaded file as it came: sources/ab/abcd...
CREATE TABLE source (
	sha256 TEXT PRIMARY KEY CHECK (length(sha256) = 64),
	bytes INTEGER NOT NULL,
	file_name TEXT NOT NULL,
	stored_ms INTEGER NOT NULL,
	stored_by INTEGER NOT NULL REFERENCES person
) STRICT, WITHOUT ROWID;

CREATE TABLE ride (
	id INTEGER PRIMARY KEY,
	-- a file counts once
	sha256 TEXT NOT NULL UNIQUE REFERENCES source,
	file_name TEXT NOT NULL,
	format TEXT NOT NULL,
	started_ms INTEGER NOT NULL,
	duration_s REAL NOT NULL,
	local_offset_s INTEGER,
	-- what the file says; what a person says wins
	file_trainer INTEGER CHECK (file_trainer IN (0, 1)),
	motor_assisted INTEGER CHECK (motor_assisted IN (0, 1)),
	trainer INTEGER CHECK (trainer IN (0, 1)),
	wet INTEGER CHECK (wet IN (0, 1)),
	wheel_id INTEGER REFERENCES wheel,
	-- only when a person chose it; else it follows from wheel and time
	chosen_build_id INTEGER REFERENCES build,
	rider_id INTEGER REFERENCES person,
	twin_of INTEGER REFERENCES ride,
	twin_decision TEXT CHECK (twin_decision IN ('same recording', 'different ride')),
	withdrawn_ms INTEGER,
	withdrawn_reason TEXT,
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	created_ms INTEGER NOT NULL,
	CHECK ((withdrawn_ms IS NULL) = (withdrawn_reason IS NULL))
) STRICT;
CREATE INDEX ride_by_wheel ON ride (wheel_id, started_ms);
CREATE INDEX ride_by_start ON ride (started_ms);

-- Speed and cadence at whole multiples of 10 s UTC, to recognise the same recording in other bytes. Large
-- things lie apart from the rows that lists and statistics read.
CREATE TABLE ride_signature (
	ride_id INTEGER PRIMARY KEY REFERENCES ride,
	signature BLOB NOT NULL
) STRICT;

-- Results of one ride by one version of the analysis. Statistics read these rows, never traces.
CREATE TABLE result (
	ride_id INTEGER NOT NULL REFERENCES ride,
	version INTEGER NOT NULL,
	total_m REAL NOT NULL,
	observed_m REAL NOT NULL,
	driven_m REAL NOT NULL,
	computed_ms INTEGER NOT NULL,
	PRIMARY KEY (ride_id, version)
) STRICT, WITHOUT ROWID;

-- Gears, warnings, marks, gaps, pauses: shown with a result, never counted.
CREATE TABLE result_detail (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	detail TEXT NOT NULL CHECK (json_valid(detail)),
	PRIMARY KEY (ride_id, version),
	FOREIGN KEY (ride_id, version) REFERENCES result
) STRICT;

CREATE TABLE observed_stretch (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	start_s REAL NOT NULL,
	end_s REAL NOT NULL,
	start_m REAL NOT NULL,
	end_m REAL NOT NULL,
	PRIMARY KEY (ride_id, version, start_s),
	FOREIGN KEY (ride_id, version) REFERENCES result
) STRICT, WITHOUT ROWID;

-- What a person decided about an event: absolute time and the overrun that was judged, so that it can be
-- found again among the events of another analysis version. Superseded, never removed.
CREATE TABLE verdict (
	id INTEGER PRIMARY KEY,
	ride_id INTEGER NOT NULL REFERENCES ride,
	start_ms INTEGER NOT NULL,
	end_ms INTEGER NOT NULL,
	kind TEXT NOT NULL,
	overrun_crank_deg REAL NOT NULL,
	verdict TEXT NOT NULL CHECK (verdict IN ('confirmed', 'rejected')),
	reason TEXT CHECK (reason IN ('shift', 'chain', 'sensor', 'surface', 'other')),
	note TEXT NOT NULL DEFAULT '',
	actor_id INTEGER NOT NULL REFERENCES person,
	at_ms INTEGER NOT NULL,
	superseded_ms INTEGER
) STRICT;
CREATE INDEX verdict_by_ride ON verdict (ride_id, superseded_ms);

CREATE TABLE slip_event (
	id INTEGER PRIMARY KEY,
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	start_s REAL NOT NULL,
	end_s REAL NOT NULL,
	at_m REAL NOT NULL,
	kind TEXT NOT NULL,
	overrun_crank_deg REAL NOT NULL,
	overrun_crank_lower_deg REAL NOT NULL,
	overrun_crank_upper_deg REAL NOT NULL,
	overrun_hub_deg REAL NOT NULL,
	gear TEXT,
	hub_torque_nm REAL,
	hub_torque_lower_nm REAL,
	hub_torque_upper_nm REAL,
	power_lost REAL,
	strength REAL NOT NULL,
	observed INTEGER NOT NULL CHECK (observed IN (0, 1)),
	reasons TEXT NOT NULL CHECK (json_valid(reasons)),
	-- the verdict that stands for this event now
	verdict_id INTEGER REFERENCES verdict,
	FOREIGN KEY (ride_id, version) REFERENCES result
) STRICT;
CREATE INDEX slip_event_by_ride ON slip_event (ride_id, version, start_s);

-- Every file that was handed in, from the first byte to its ride.
CREATE TABLE import (
	id INTEGER PRIMARY KEY,
	file_name TEXT NOT NULL,
	bytes INTEGER NOT NULL,
	stage TEXT NOT NULL CHECK (stage IN
		('receiving', 'waiting', 'analysing', 'done', 'refused', 'already in the ledger', 'failed')),
	sha256 TEXT REFERENCES source,
	ride_id INTEGER REFERENCES ride,
	attempts INTEGER NOT NULL DEFAULT 0,
	-- the runner that analyses it now
	owner TEXT,
	code TEXT,
	sentence TEXT,
	technical TEXT,
	-- what is known of the ride beforehand: wheelId, riderId, trainer, wet
	hints TEXT NOT NULL DEFAULT '{}' CHECK (json_valid(hints)),
	actor_id INTEGER NOT NULL REFERENCES person,
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	created_ms INTEGER NOT NULL,
	changed_ms INTEGER NOT NULL,
	CHECK (stage = 'receiving' OR sha256 IS NOT NULL)
) STRICT;
CREATE INDEX import_by_stage ON import (stage, id);
CREATE INDEX import_by_source ON import (sha256);

-- An upload that is under way: incoming/ID holds what has come so far.
CREATE TABLE upload (
	id TEXT PRIMARY KEY,
	import_id INTEGER NOT NULL UNIQUE REFERENCES import ON DELETE CASCADE,
	size INTEGER NOT NULL,
	-- set when everything has come, before the file is moved to sources/
	sha256 TEXT,
	finished INTEGER NOT NULL DEFAULT 0 CHECK (finished IN (0, 1)),
	touched_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- Whoever holds 'runner' analyses; a lease without a living owner or heartbeat may be taken.
CREATE TABLE lease (
	name TEXT PRIMARY KEY,
	owner TEXT NOT NULL,
	machine TEXT NOT NULL,
	pid INTEGER NOT NULL,
	-- tells a process from a later one with the same number
	process_started TEXT NOT NULL,
	heartbeat_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- Rides whose result or traces have to be made again (new analysis version, lost traces).
CREATE TABLE derivation (
	ride_id INTEGER NOT NULL REFERENCES ride,
	version INTEGER NOT NULL,
	attempts INTEGER NOT NULL DEFAULT 0,
	failure TEXT,
	PRIMARY KEY (ride_id, version)
) STRICT, WITHOUT ROWID;
