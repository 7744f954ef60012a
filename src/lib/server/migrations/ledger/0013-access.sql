-- How people come in when the server can be reached from elsewhere. None of it is evidence, none is in an archive.

-- A password as a slow hash: function, its parameters, salt and hash in one text.
CREATE TABLE person_password (
	person_id INTEGER PRIMARY KEY REFERENCES person ON DELETE CASCADE,
	hash TEXT NOT NULL,
	set_ms INTEGER NOT NULL
) STRICT;

-- Links that let somebody in. The token itself is known to whoever got the link; here is its hash alone.
CREATE TABLE access_link (
	id INTEGER PRIMARY KEY,
	person_id INTEGER NOT NULL REFERENCES person ON DELETE CASCADE,
	-- 'password': once, to set one; 'rides': a rider's own, until withdrawn
	purpose TEXT NOT NULL CHECK (purpose IN ('password', 'rides')),
	token_sha256 TEXT NOT NULL UNIQUE CHECK (length(token_sha256) = 64),
	created_ms INTEGER NOT NULL,
	-- NULL = until withdrawn
	expires_ms INTEGER,
	last_used_ms INTEGER,
	-- used up or withdrawn
	ended_ms INTEGER
) STRICT;
CREATE INDEX access_link_by_person ON access_link (person_id, purpose);

-- A browser that came in. The cookie holds the token, here is its hash.
CREATE TABLE session (
	id INTEGER PRIMARY KEY,
	token_sha256 TEXT NOT NULL UNIQUE CHECK (length(token_sha256) = 64),
	person_id INTEGER NOT NULL REFERENCES person ON DELETE CASCADE,
	-- the link that it came by; NULL = by password
	link_id INTEGER REFERENCES access_link ON DELETE CASCADE,
	device TEXT NOT NULL CHECK (device IN ('phone', 'computer')),
	created_ms INTEGER NOT NULL,
	seen_ms INTEGER NOT NULL,
	expires_ms INTEGER NOT NULL,
	ended_ms INTEGER
) STRICT;
CREATE INDEX session_by_person ON session (person_id);

-- Attempts to come in that failed, by account and by address (both hashed); taken out again when they no longer count.
CREATE TABLE access_attempt (
	id INTEGER PRIMARY KEY,
	key TEXT NOT NULL,
	at_ms INTEGER NOT NULL
) STRICT;
CREATE INDEX access_attempt_by_key ON access_attempt (key, at_ms);
