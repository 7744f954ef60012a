-- What each ride was exposed to, by one version of the analysis. Cells and hours each add up to the
-- result's driven_m and observed_m.
CREATE TABLE exposure_cell (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	cell INTEGER NOT NULL,
	-- NULL = the torque is not known there (never 0)
	torque_from_nm REAL,
	-- NULL = open upwards, or not known
	torque_to_nm REAL,
	gear TEXT,
	ratio REAL,
	driven_m REAL NOT NULL,
	driven_s REAL NOT NULL,
	observed_m REAL NOT NULL,
	observed_s REAL NOT NULL,
	driven_turns REAL NOT NULL,
	observed_turns REAL NOT NULL,
	pick_ups INTEGER NOT NULL,
	observed_pick_ups INTEGER NOT NULL,
	PRIMARY KEY (ride_id, version, cell),
	FOREIGN KEY (ride_id, version) REFERENCES result
) STRICT, WITHOUT ROWID;

CREATE TABLE exposure_hour (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	hour INTEGER NOT NULL,
	driven_m REAL NOT NULL,
	driven_s REAL NOT NULL,
	observed_m REAL NOT NULL,
	observed_s REAL NOT NULL,
	driven_turns REAL NOT NULL,
	observed_turns REAL NOT NULL,
	pick_ups INTEGER NOT NULL,
	observed_pick_ups INTEGER NOT NULL,
	PRIMARY KEY (ride_id, version, hour),
	FOREIGN KEY (ride_id, version) REFERENCES result
) STRICT, WITHOUT ROWID;

-- Laps that the rider pressed, and whether a slip just before would have been seen.
CREATE TABLE rider_mark (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	time_s REAL NOT NULL,
	observed INTEGER NOT NULL CHECK (observed IN (0, 1)),
	PRIMARY KEY (ride_id, version, time_s),
	FOREIGN KEY (ride_id, version) REFERENCES result
) STRICT, WITHOUT ROWID;

-- What kind of device recorded the ride, as far as the file tells: no make, no model.
CREATE TABLE recording_kind (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	speed_from TEXT NOT NULL,
	rhythm TEXT NOT NULL,
	PRIMARY KEY (ride_id, version),
	FOREIGN KEY (ride_id, version) REFERENCES result
) STRICT, WITHOUT ROWID;

-- What a lap without an event meant. By absolute time, so that it outlives analysis versions; superseded,
-- never removed.
CREATE TABLE rider_mark_answer (
	id INTEGER PRIMARY KEY,
	ride_id INTEGER NOT NULL REFERENCES ride,
	mark_ms INTEGER NOT NULL,
	answer TEXT NOT NULL CHECK (answer IN ('a slip was felt', 'something else')),
	actor_id INTEGER NOT NULL REFERENCES person,
	at_ms INTEGER NOT NULL,
	superseded_ms INTEGER
) STRICT;
CREATE INDEX rider_mark_answer_by_ride ON rider_mark_answer (ride_id, superseded_ms);

-- The rider's word on what the laps of this ride mean; NULL = not said.
ALTER TABLE ride ADD COLUMN laps_mean_slips INTEGER CHECK (laps_mean_slips IN (0, 1));

-- A reference wheel that does not slip: what is found on it are false alarms.
ALTER TABLE wheel ADD COLUMN known_good INTEGER NOT NULL DEFAULT 0 CHECK (known_good IN (0, 1));

-- Answers about laps are evidence like rides (see 0002).
CREATE TRIGGER evidence_rider_mark_answer_added AFTER INSERT ON rider_mark_answer
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_rider_mark_answer_changed AFTER UPDATE ON rider_mark_answer
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_rider_mark_answer_removed AFTER DELETE ON rider_mark_answer
BEGIN UPDATE evidence SET changes = changes + 1; END;
