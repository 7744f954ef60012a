-- Archives that are handed in: each file in one becomes a row of its own, read or not. The table is made anew,
-- because what a stage may be is one of its rules.
CREATE TEMP TABLE kept_import AS SELECT * FROM main.import;
CREATE TEMP TABLE kept_upload AS SELECT * FROM main.upload;
DROP TABLE upload;
DROP TABLE import;

-- Every file that was handed in, from the first byte to its ride.
CREATE TABLE import (
	id INTEGER PRIMARY KEY,
	file_name TEXT NOT NULL,
	bytes INTEGER NOT NULL,
	-- 'asks': kept, and waits for an answer of a person; 'left out': of an archive, no ride by its name and bytes
	stage TEXT NOT NULL CHECK (stage IN ('receiving', 'waiting', 'analysing', 'done', 'refused',
		'already in the ledger', 'failed', 'asks', 'unpacking', 'unpacked', 'left out')),
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
	-- the archive that it came in, its place in the list of that archive, and its folder there
	archive_id INTEGER REFERENCES import ON DELETE CASCADE,
	member INTEGER,
	folder TEXT,
	-- of an archive: the hash of its own bytes, which lie in archives/ until all that is in it is written down
	archive_sha256 TEXT CHECK (length(archive_sha256) = 64),
	CHECK ((archive_id IS NULL) = (member IS NULL)),
	CHECK (stage NOT IN ('unpacking', 'unpacked') OR archive_sha256 IS NOT NULL),
	CHECK (stage IN ('receiving', 'refused', 'left out') OR sha256 IS NOT NULL OR archive_sha256 IS NOT NULL)
) STRICT;
INSERT INTO import (id, file_name, bytes, stage, sha256, ride_id, attempts, owner, code, sentence, technical, hints,
	actor_id, example, created_ms, changed_ms)
SELECT id, file_name, bytes, stage, sha256, ride_id, attempts, owner, code, sentence, technical, hints,
	actor_id, example, created_ms, changed_ms FROM kept_import;
CREATE INDEX import_by_stage ON import (stage, id);
CREATE INDEX import_by_source ON import (sha256);
CREATE UNIQUE INDEX import_by_archive ON import (archive_id, member) WHERE archive_id IS NOT NULL;

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
INSERT INTO upload SELECT * FROM kept_upload;
DROP TABLE temp.kept_import;
DROP TABLE temp.kept_upload;
