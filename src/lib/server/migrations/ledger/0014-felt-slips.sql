-- A slip that a rider felt and says so afterwards, about when. Its time is known to some minutes, so it is held against
-- events for people to look at and is in no rate. Taken back, never removed.
CREATE TABLE felt_slip (
	id INTEGER PRIMARY KEY,
	ride_id INTEGER NOT NULL REFERENCES ride,
	at_ms INTEGER NOT NULL,
	note TEXT NOT NULL DEFAULT '' CHECK (length(note) <= 200),
	actor_id INTEGER NOT NULL REFERENCES person,
	created_ms INTEGER NOT NULL,
	taken_back_ms INTEGER
) STRICT;
CREATE INDEX felt_slip_by_ride ON felt_slip (ride_id);
