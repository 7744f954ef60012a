-- What is in a hub. A part is one row a (number, revision, batch); a build is a bill of parts with the
-- torques, the bench check and the files that belong to it. Lengths here are millimetres, torques Nm.
CREATE TABLE part (
	id INTEGER PRIMARY KEY,
	number TEXT NOT NULL COLLATE NOCASE CHECK (length(number) BETWEEN 1 AND 60),
	-- '' = none is written on it
	revision TEXT NOT NULL DEFAULT '' COLLATE NOCASE CHECK (length(revision) <= 30),
	batch TEXT NOT NULL DEFAULT '' COLLATE NOCASE CHECK (length(batch) <= 60),
	name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
	kind TEXT NOT NULL CHECK (kind IN ('ratchet ring', 'toothed ring', 'pawl set', 'spring', 'spring seat',
		'spacer', 'axle', 'bearing', 'end cap', 'freehub body', 'hub shell', 'seal', 'lubricant', 'other')),
	material TEXT NOT NULL DEFAULT '' CHECK (length(material) <= 200),
	-- '' = not said
	finish TEXT NOT NULL DEFAULT '' CHECK (finish IN ('', 'as produced', 'hand-fitted')),
	-- positions per hub turn at which it can take up drive; NULL = it has none, or not said
	points_of_engagement INTEGER CHECK (points_of_engagement BETWEEN 3 AND 720),
	note TEXT NOT NULL DEFAULT '' CHECK (length(note) <= 2000),
	-- rises with every change: two people who edit the same part do not overwrite each other
	row_version INTEGER NOT NULL DEFAULT 1,
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	created_ms INTEGER NOT NULL,
	UNIQUE (number, revision, batch)
) STRICT;

-- Nominal lengths of a part, with what may be missing and what may be too much.
CREATE TABLE part_length (
	part_id INTEGER NOT NULL REFERENCES part,
	what TEXT NOT NULL COLLATE NOCASE CHECK (length(what) BETWEEN 1 AND 60),
	nominal_mm REAL NOT NULL CHECK (nominal_mm > 0 AND nominal_mm <= 500),
	minus_mm REAL NOT NULL CHECK (minus_mm >= 0 AND minus_mm <= 20),
	plus_mm REAL NOT NULL CHECK (plus_mm >= 0 AND plus_mm <= 20),
	PRIMARY KEY (part_id, what)
) STRICT, WITHOUT ROWID;

-- A revision is the same build with a change; a copy is the start of another build. Each names its
-- predecessor; the older stays as it was.
ALTER TABLE build ADD COLUMN revision INTEGER NOT NULL DEFAULT 1 CHECK (revision >= 1);
ALTER TABLE build ADD COLUMN revision_of INTEGER REFERENCES build;
ALTER TABLE build ADD COLUMN copied_from INTEGER REFERENCES build;
ALTER TABLE build ADD COLUMN row_version INTEGER NOT NULL DEFAULT 1;
ALTER TABLE build ADD COLUMN built_by INTEGER REFERENCES person;
ALTER TABLE build ADD COLUMN built_ms INTEGER;
-- bearing preload as the workshop sets it, in its own words
ALTER TABLE build ADD COLUMN preload TEXT NOT NULL DEFAULT '' CHECK (length(preload) <= 200);
ALTER TABLE build ADD COLUMN end_float_mm REAL CHECK (end_float_mm BETWEEN 0 AND 5);
ALTER TABLE build ADD COLUMN notes TEXT NOT NULL DEFAULT '' CHECK (length(notes) <= 4000);
CREATE INDEX build_by_predecessor ON build (revision_of);

-- The bill of parts in order of assembly.
CREATE TABLE build_part (
	build_id INTEGER NOT NULL REFERENCES build,
	position INTEGER NOT NULL CHECK (position >= 1),
	part_id INTEGER NOT NULL REFERENCES part,
	-- pieces; grams of a lubricant
	quantity REAL NOT NULL CHECK (quantity > 0 AND quantity <= 1000),
	-- '' = it bears none
	serial TEXT NOT NULL DEFAULT '' COLLATE NOCASE CHECK (length(serial) <= 60),
	note TEXT NOT NULL DEFAULT '' CHECK (length(note) <= 500),
	PRIMARY KEY (build_id, position)
) STRICT, WITHOUT ROWID;
CREATE INDEX build_part_by_part ON build_part (part_id);
CREATE INDEX build_part_by_serial ON build_part (serial) WHERE serial <> '';

CREATE TABLE build_torque (
	build_id INTEGER NOT NULL REFERENCES build,
	position INTEGER NOT NULL CHECK (position >= 1),
	joint TEXT NOT NULL COLLATE NOCASE CHECK (length(joint) BETWEEN 1 AND 120),
	wanted_nm REAL CHECK (wanted_nm > 0 AND wanted_nm <= 300),
	-- what the tool was set to or showed when it was tightened; NULL = not written down
	recorded_nm REAL CHECK (recorded_nm > 0 AND recorded_nm <= 300),
	tool TEXT NOT NULL DEFAULT '' CHECK (length(tool) <= 120),
	by INTEGER REFERENCES person,
	at_ms INTEGER,
	PRIMARY KEY (build_id, position),
	UNIQUE (build_id, joint)
) STRICT, WITHOUT ROWID;

-- What has to be known before anybody rides a build: a check on the bench, or why it was left out.
-- Never changed; it stops to hold when the hardware is changed.
CREATE TABLE bench_check (
	id INTEGER PRIMARY KEY,
	build_id INTEGER NOT NULL REFERENCES build,
	kind TEXT NOT NULL CHECK (kind IN ('check', 'override')),
	-- static drive torque at the freehub body that was held
	static_torque_nm REAL CHECK (static_torque_nm > 0 AND static_torque_nm <= 2000),
	torque_held INTEGER CHECK (torque_held IN (0, 1)),
	coasts_freely INTEGER CHECK (coasts_freely IN (0, 1)),
	-- the ring did not creep in the shell
	no_creep INTEGER CHECK (no_creep IN (0, 1)),
	-- an override says why
	note TEXT NOT NULL DEFAULT '' CHECK (length(note) <= 1000),
	by INTEGER NOT NULL REFERENCES person,
	at_ms INTEGER NOT NULL,
	created_ms INTEGER NOT NULL,
	void_ms INTEGER,
	void_reason TEXT,
	CHECK (kind = 'override' OR (static_torque_nm IS NOT NULL AND torque_held IS NOT NULL
		AND coasts_freely IS NOT NULL AND no_creep IS NOT NULL)),
	CHECK (kind = 'check' OR length(note) >= 10),
	CHECK ((void_ms IS NULL) = (void_reason IS NULL))
) STRICT;
CREATE INDEX bench_check_by_build ON bench_check (build_id);

-- Photos, drawings, measurement sheets of anything: subject is the table's word, as in the trail. The file
-- lies in the store like a source. Withdrawn with a reason, never removed.
CREATE TABLE attachment (
	id INTEGER PRIMARY KEY,
	subject TEXT NOT NULL CHECK (length(subject) BETWEEN 1 AND 40),
	subject_id INTEGER NOT NULL,
	sha256 TEXT NOT NULL REFERENCES source,
	file_name TEXT NOT NULL,
	media_type TEXT NOT NULL CHECK (media_type IN
		('image/png', 'image/jpeg', 'image/webp', 'application/pdf', 'text/plain')),
	bytes INTEGER NOT NULL CHECK (bytes > 0),
	caption TEXT NOT NULL DEFAULT '' CHECK (length(caption) <= 300),
	by INTEGER NOT NULL REFERENCES person,
	at_ms INTEGER NOT NULL,
	withdrawn_ms INTEGER,
	withdrawn_by INTEGER REFERENCES person,
	withdrawn_reason TEXT,
	example INTEGER NOT NULL DEFAULT 0 CHECK (example IN (0, 1)),
	CHECK ((withdrawn_ms IS NULL) = (withdrawn_reason IS NULL))
) STRICT;
CREATE INDEX attachment_by_subject ON attachment (subject, subject_id);
CREATE INDEX attachment_by_file ON attachment (sha256);

-- The distance of a part follows from the bills: they are evidence (see 0002).
CREATE TRIGGER evidence_part_changed AFTER UPDATE ON part
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_build_part_added AFTER INSERT ON build_part
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_build_part_changed AFTER UPDATE ON build_part
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_build_part_removed AFTER DELETE ON build_part
BEGIN UPDATE evidence SET changes = changes + 1; END;
