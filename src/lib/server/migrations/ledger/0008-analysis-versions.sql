-- What the analysis was told of the bike is part of a result's key: a hash over canonical JSON, '' = nothing.
-- The facts themselves stand in result_detail.
ALTER TABLE result ADD COLUMN bike_facts TEXT NOT NULL DEFAULT '';
-- attempts and failures hold for these facts alone
ALTER TABLE derivation ADD COLUMN bike_facts TEXT NOT NULL DEFAULT '';

-- Slips of known sizes that were put into a ride to see which of them would be found; a later stage than the
-- result, made again with each new one.
CREATE TABLE insertion_test (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	seed INTEGER NOT NULL,
	passes INTEGER NOT NULL,
	put INTEGER NOT NULL CHECK (put >= 0),
	found INTEGER NOT NULL CHECK (found BETWEEN 0 AND put),
	-- largest difference of observed metres between a pass and the ride itself; wants to be near 0
	observed_change_m REAL NOT NULL,
	-- why nothing could be put in; NULL = something was
	not_run TEXT,
	computed_ms INTEGER NOT NULL,
	PRIMARY KEY (ride_id, version),
	FOREIGN KEY (ride_id, version) REFERENCES result ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE insertion_tally (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	tally INTEGER NOT NULL,
	size_crank_deg REAL NOT NULL,
	place TEXT NOT NULL CHECK (place IN ('steady', 'near a shift', 'start', 'burst')),
	-- lower edge of the bin of mean hub torque as events are filed; NULL = not known
	torque_from_nm REAL,
	-- whether the second called itself observed before anything was put in
	observed INTEGER NOT NULL CHECK (observed IN (0, 1)),
	put INTEGER NOT NULL CHECK (put > 0),
	found INTEGER NOT NULL CHECK (found BETWEEN 0 AND put),
	PRIMARY KEY (ride_id, version, tally),
	FOREIGN KEY (ride_id, version) REFERENCES insertion_test ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Counted before the attempt is made, so that a ride which ends the program is given up in the end.
CREATE TABLE insertion_attempt (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	attempts INTEGER NOT NULL DEFAULT 0,
	failure TEXT,
	PRIMARY KEY (ride_id, version),
	FOREIGN KEY (ride_id, version) REFERENCES result ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TRIGGER evidence_insertion_test_added AFTER INSERT ON insertion_test
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_insertion_test_removed AFTER DELETE ON insertion_test
BEGIN UPDATE evidence SET changes = changes + 1; END;

-- a verdict finds its events, of all versions, without reading every event
CREATE INDEX slip_event_by_verdict ON slip_event (verdict_id) WHERE verdict_id IS NOT NULL;
