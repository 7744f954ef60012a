-- What the columns of loggers' tables are. One for each kind of header, so that it is asked once.
CREATE TABLE column_mapping (
	-- delimiter and names of the columns, as JSON
	header TEXT PRIMARY KEY,
	mapping TEXT NOT NULL CHECK (json_valid(mapping)),
	actor_id INTEGER NOT NULL REFERENCES person,
	said_ms INTEGER NOT NULL
) STRICT, WITHOUT ROWID;

-- By which a file was read: it must be read by the same again, whatever is said of other files later.
CREATE TABLE source_columns (
	sha256 TEXT PRIMARY KEY REFERENCES source ON DELETE CASCADE,
	mapping TEXT NOT NULL CHECK (json_valid(mapping))
) STRICT, WITHOUT ROWID;
