-- Axial elements, spacers in stock, inspections of wheels, incidents. Lengths of parts are millimetres
-- (..._mm), as drawings and calipers give them; distances of wheels stay metres.

-- What a build comes to on one freehub variant that may turn up; the same build has one row a variant.
CREATE TABLE hub_stack (
	id INTEGER PRIMARY KEY,
	build_id INTEGER NOT NULL REFERENCES build,
	variant TEXT NOT NULL COLLATE NOCASE CHECK (length(variant) BETWEEN 1 AND 80),
	-- NULL = as the wheel says
	over_locknut_mm REAL CHECK (over_locknut_mm BETWEEN 50 AND 300),
	-- the stack that was on the hub when the wheel was dished, and where the rim stood then
	dished_on_id INTEGER REFERENCES hub_stack ON DELETE SET NULL,
	-- rim centre from the midplane of the faces, measured on this stack; positive = towards the drive side
	rim_offset_mm REAL CHECK (rim_offset_mm BETWEEN -50 AND 50),
	note TEXT NOT NULL DEFAULT '',
	row_version INTEGER NOT NULL DEFAULT 1,
	withdrawn_ms INTEGER,
	withdrawn_reason TEXT,
	created_ms INTEGER NOT NULL,
	CHECK ((withdrawn_ms IS NULL) = (withdrawn_reason IS NULL))
) STRICT;
CREATE UNIQUE INDEX hub_stack_one_a_variant ON hub_stack (build_id, variant) WHERE withdrawn_ms IS NULL;

-- Elements in order from the left face to the right one. A sign says what a thicker element does to the
-- engagement depth and to the end float: takes from it (-1), nothing (0), adds to it (1).
CREATE TABLE hub_stack_element (
	id INTEGER PRIMARY KEY,
	hub_stack_id INTEGER NOT NULL REFERENCES hub_stack,
	position INTEGER NOT NULL CHECK (position >= 1),
	label TEXT NOT NULL CHECK (length(label) BETWEEN 1 AND 80),
	part_id INTEGER REFERENCES part,
	-- the first three lie between the faces and make the total; the others do not
	side TEXT NOT NULL CHECK (side IN ('left', 'hub', 'right', 'inside the hub', 'behind the cassette')),
	nominal_mm REAL NOT NULL CHECK (nominal_mm >= 0 AND nominal_mm <= 300),
	minus_mm REAL NOT NULL DEFAULT 0 CHECK (minus_mm >= 0 AND minus_mm <= 10),
	plus_mm REAL NOT NULL DEFAULT 0 CHECK (plus_mm >= 0 AND plus_mm <= 10),
	measured_mm REAL CHECK (measured_mm >= 0 AND measured_mm <= 300),
	in_engagement INTEGER NOT NULL DEFAULT 0 CHECK (in_engagement IN (-1, 0, 1)),
	in_end_float INTEGER NOT NULL DEFAULT 0 CHECK (in_end_float IN (-1, 0, 1)),
	UNIQUE (hub_stack_id, position)
) STRICT;

-- How many spacers of a thickness lie in the drawer. Taken out of the list by count 0, never by removal.
CREATE TABLE stocked_spacer (
	id INTEGER PRIMARY KEY,
	thickness_mm REAL NOT NULL UNIQUE CHECK (thickness_mm > 0 AND thickness_mm <= 20),
	count INTEGER NOT NULL CHECK (count BETWEEN 0 AND 10000),
	note TEXT NOT NULL DEFAULT '',
	row_version INTEGER NOT NULL DEFAULT 1,
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	created_ms INTEGER NOT NULL
) STRICT;

CREATE TABLE inspection (
	id INTEGER PRIMARY KEY,
	wheel_id INTEGER NOT NULL REFERENCES wheel,
	at_ms INTEGER NOT NULL,
	-- what the odometer showed; checks the distance that follows from rides, never drives it
	odometer_m REAL CHECK (odometer_m >= 0 AND odometer_m <= 1e9),
	inspected_by INTEGER NOT NULL REFERENCES person,
	note TEXT NOT NULL DEFAULT '',
	row_version INTEGER NOT NULL DEFAULT 1,
	withdrawn_ms INTEGER,
	withdrawn_reason TEXT,
	created_ms INTEGER NOT NULL,
	CHECK ((withdrawn_ms IS NULL) = (withdrawn_reason IS NULL))
) STRICT;
CREATE INDEX inspection_by_wheel ON inspection (wheel_id, at_ms);

-- One thing that was looked at: measured values in a unit, or words.
CREATE TABLE inspection_finding (
	id INTEGER PRIMARY KEY,
	inspection_id INTEGER NOT NULL REFERENCES inspection,
	position INTEGER NOT NULL CHECK (position >= 1),
	kind TEXT NOT NULL CHECK (kind IN ('tooth height', 'engagement depth', 'pawl edge', 'spring force',
		'coasting drag', 'end float', 'preload', 'bearing feel', 'witness marks')),
	-- which teeth, which pawl; the same words make one series
	place TEXT NOT NULL DEFAULT '' COLLATE NOCASE,
	instrument TEXT NOT NULL DEFAULT '',
	-- NULL where nothing was measured
	unit TEXT,
	resolution REAL CHECK (resolution > 0),
	wear_limit REAL,
	limit_is TEXT CHECK (limit_is IN ('lowest', 'highest')),
	words TEXT NOT NULL DEFAULT '',
	UNIQUE (inspection_id, position),
	CHECK ((wear_limit IS NULL) = (limit_is IS NULL))
) STRICT;

-- Each repeat as it was read.
CREATE TABLE inspection_value (
	finding_id INTEGER NOT NULL REFERENCES inspection_finding,
	repeat INTEGER NOT NULL CHECK (repeat BETWEEN 1 AND 100),
	value REAL NOT NULL,
	PRIMARY KEY (finding_id, repeat)
) STRICT, WITHOUT ROWID;

-- A slip or failure that was reported without a ride file. Never removed.
CREATE TABLE incident (
	id INTEGER PRIMARY KEY,
	wheel_id INTEGER NOT NULL REFERENCES wheel,
	at_ms INTEGER NOT NULL,
	-- NULL = somebody outside the workshop, who stays unnamed here
	reported_by INTEGER REFERENCES person,
	odometer_m REAL CHECK (odometer_m >= 0 AND odometer_m <= 1e9),
	what TEXT NOT NULL CHECK (what IN ('slip', 'failed pick-up', 'no drive any more', 'other failure')),
	felt TEXT NOT NULL CHECK (length(felt) BETWEEN 1 AND 2000),
	severity TEXT NOT NULL CHECK (severity IN ('noticed', 'hard to ride on', 'nearly fell', 'fell')),
	injured INTEGER NOT NULL DEFAULT 0 CHECK (injured IN (0, 1)),
	row_version INTEGER NOT NULL DEFAULT 1,
	created_by INTEGER NOT NULL REFERENCES person,
	created_ms INTEGER NOT NULL
) STRICT;
CREATE INDEX incident_by_wheel ON incident (wheel_id, at_ms);

-- What an incident turned out to be, and why. Superseded when it is opened again, never removed.
CREATE TABLE incident_closing (
	id INTEGER PRIMARY KEY,
	incident_id INTEGER NOT NULL REFERENCES incident,
	outcome TEXT NOT NULL CHECK (outcome IN ('counts as a slip', 'no slip of this hub', 'counted on a ride',
		'written down by mistake')),
	reason TEXT NOT NULL CHECK (length(reason) BETWEEN 3 AND 1000),
	actor_id INTEGER NOT NULL REFERENCES person,
	at_ms INTEGER NOT NULL,
	superseded_ms INTEGER
) STRICT;
CREATE UNIQUE INDEX incident_closing_that_stands ON incident_closing (incident_id)
WHERE superseded_ms IS NULL;

CREATE TRIGGER incident_is_not_removed BEFORE DELETE ON incident
WHEN (SELECT example FROM wheel WHERE id = OLD.wheel_id) = 0
BEGIN SELECT raise(ABORT, 'an incident is never removed'); END;

-- Evidence, see 0002.
CREATE TRIGGER evidence_incident_added AFTER INSERT ON incident
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_incident_changed AFTER UPDATE ON incident
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_incident_removed AFTER DELETE ON incident
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_incident_closing_added AFTER INSERT ON incident_closing
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_incident_closing_changed AFTER UPDATE ON incident_closing
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_incident_closing_removed AFTER DELETE ON incident_closing
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_inspection_added AFTER INSERT ON inspection
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_inspection_changed AFTER UPDATE ON inspection
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_inspection_removed AFTER DELETE ON inspection
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_inspection_value_added AFTER INSERT ON inspection_value
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_inspection_value_changed AFTER UPDATE ON inspection_value
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_inspection_value_removed AFTER DELETE ON inspection_value
BEGIN UPDATE evidence SET changes = changes + 1; END;
