-- What a build has to show, written down before its test. A version is never changed and never removed;
-- only rides that begin after set_ms count for it.
CREATE TABLE release_criteria (
	id INTEGER PRIMARY KEY,
	build_id INTEGER NOT NULL REFERENCES build,
	-- 1, 2, 3 ... of this build
	version INTEGER NOT NULL CHECK (version >= 1),
	-- the build that it replaces: counted against expected, the torque at which it slipped
	reference_build_id INTEGER REFERENCES build,
	-- ReleaseCriteria of src/lib/release/criteria.ts, canonical JSON
	criteria TEXT NOT NULL CHECK (json_valid(criteria)),
	reason TEXT NOT NULL,
	set_by INTEGER NOT NULL REFERENCES person,
	set_ms INTEGER NOT NULL,
	UNIQUE (build_id, version),
	CHECK (reference_build_id IS NULL OR reference_build_id <> build_id)
) STRICT;
-- but that the invented build which they were set against goes with the example
CREATE TRIGGER release_criteria_are_not_changed BEFORE UPDATE ON release_criteria
WHEN NOT (NEW.reference_build_id IS NULL AND (SELECT example FROM build WHERE id = OLD.reference_build_id) = 1
	AND NEW.id = OLD.id AND NEW.build_id = OLD.build_id AND NEW.version = OLD.version
	AND NEW.criteria = OLD.criteria AND NEW.reason = OLD.reason AND NEW.set_by = OLD.set_by
	AND NEW.set_ms = OLD.set_ms)
BEGIN SELECT raise(ABORT, 'release criteria are never changed'); END;
CREATE TRIGGER release_criteria_are_not_removed BEFORE DELETE ON release_criteria
WHEN (SELECT example FROM build WHERE id = OLD.build_id) = 0
BEGIN SELECT raise(ABORT, 'release criteria are never removed'); END;

-- A signed decision with frozen copies of everything it was made on.
CREATE TABLE release_decision (
	id INTEGER PRIMARY KEY,
	build_id INTEGER NOT NULL REFERENCES build,
	criteria_id INTEGER NOT NULL REFERENCES release_criteria,
	decision TEXT NOT NULL CHECK (decision IN ('released', 'not released', 'continue')),
	reason TEXT NOT NULL CHECK (length(reason) BETWEEN 3 AND 4000),
	actor_id INTEGER NOT NULL REFERENCES person,
	at_ms INTEGER NOT NULL,
	analysis_version INTEGER NOT NULL,
	-- canonical JSON of rounded values: criteria, states, rides, events
	record TEXT NOT NULL CHECK (json_valid(record)),
	-- of the bytes of record
	record_sha256 TEXT NOT NULL CHECK (length(record_sha256) = 64)
) STRICT;
CREATE INDEX release_decision_by_build ON release_decision (build_id, at_ms);
CREATE TRIGGER release_decision_is_not_changed BEFORE UPDATE ON release_decision
BEGIN SELECT raise(ABORT, 'a release decision is never changed'); END;
CREATE TRIGGER release_decision_is_not_removed BEFORE DELETE ON release_decision
WHEN (SELECT example FROM build WHERE id = OLD.build_id) = 0
BEGIN SELECT raise(ABORT, 'a release decision is never removed'); END;
