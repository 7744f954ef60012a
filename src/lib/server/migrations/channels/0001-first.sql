-- Traces of rides, derived from their sources: may be thrown away and made again. Keyed by the source and
-- the analysis version, because they are written before the ledger knows the ride.
CREATE TABLE channel (
	sha256 TEXT NOT NULL,
	version INTEGER NOT NULL,
	name TEXT NOT NULL,
	-- values at one a second
	length INTEGER NOT NULL,
	-- what one whole number in the chunks is worth, in the unit of the name
	step REAL NOT NULL,
	PRIMARY KEY (sha256, version, name)
) STRICT, WITHOUT ROWID;

-- level 0: every value; level 1, 2 ...: the smallest and the largest of each 16, 256 ... values
CREATE TABLE channel_chunk (
	sha256 TEXT NOT NULL,
	version INTEGER NOT NULL,
	name TEXT NOT NULL,
	level INTEGER NOT NULL,
	side TEXT NOT NULL CHECK (side IN ('value', 'min', 'max')),
	chunk INTEGER NOT NULL,
	count INTEGER NOT NULL,
	packed BLOB NOT NULL,
	PRIMARY KEY (sha256, version, name, level, side, chunk),
	FOREIGN KEY (sha256, version, name) REFERENCES channel ON DELETE CASCADE
) STRICT;
