-- Slips that were put into a ride and found there, as the analysis shows them: what a reviewer meets among real
-- events, to see how well slips are recognised. In no figure of any build.
CREATE TABLE review_probe (
	ride_id INTEGER NOT NULL,
	version INTEGER NOT NULL,
	probe INTEGER NOT NULL,
	-- what was put in, crank degrees
	put_crank_deg REAL NOT NULL,
	-- the event as found and the seconds around it
	content TEXT NOT NULL CHECK (json_valid(content)),
	PRIMARY KEY (ride_id, version, probe),
	FOREIGN KEY (ride_id, version) REFERENCES insertion_test ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- What was laid before a reviewer without saying of which wheel, build, rider or day it is, and the answer.
CREATE TABLE review_item (
	id INTEGER PRIMARY KEY,
	-- random: addresses and pages name it by this alone
	token TEXT NOT NULL UNIQUE,
	reviewer_id INTEGER NOT NULL REFERENCES person,
	purpose TEXT NOT NULL CHECK (purpose IN ('first look', 'second look', 'put in', 'known good')),
	ride_id INTEGER NOT NULL REFERENCES ride,
	version INTEGER NOT NULL,
	-- the event of that version; NULL = a slip that was put in
	event_id INTEGER,
	-- which of the slips that were put in, and how large, crank degrees
	probe INTEGER,
	put_crank_deg REAL,
	opened_ms INTEGER NOT NULL,
	-- NULL = lies before the reviewer
	answer TEXT CHECK (answer IN ('confirmed', 'rejected', 'skipped')),
	reason TEXT CHECK (reason IN ('shift', 'chain', 'sensor', 'surface', 'other')),
	note TEXT NOT NULL DEFAULT '',
	answered_ms INTEGER,
	-- the verdict that was given, or, on a second look, the one that stood
	verdict_id INTEGER REFERENCES verdict,
	-- a second look that came to another answer: the verdict was set aside
	disagrees INTEGER NOT NULL DEFAULT 0 CHECK (disagrees IN (0, 1)),
	CHECK ((event_id IS NULL) = (purpose = 'put in')),
	CHECK ((answer IS NULL) = (answered_ms IS NULL))
) STRICT;
CREATE INDEX review_item_by_reviewer ON review_item (reviewer_id, answered_ms);
CREATE INDEX review_item_by_event ON review_item (event_id);
CREATE INDEX review_item_by_ride ON review_item (ride_id);
