-- Ride files that were taken away for good because a rider asked for it: the bytes are gone, what was computed
-- from them stays. Never changed and never removed, or the same file could come back unseen.
CREATE TABLE erased_source (
	sha256 TEXT PRIMARY KEY REFERENCES source,
	erased_ms INTEGER NOT NULL,
	erased_by INTEGER NOT NULL REFERENCES person,
	-- why, in the words of whoever did it; no names
	reason TEXT NOT NULL CHECK (length(reason) BETWEEN 3 AND 400)
) STRICT, WITHOUT ROWID;
CREATE TRIGGER erased_source_is_not_changed BEFORE UPDATE ON erased_source
BEGIN SELECT raise(ABORT, 'a tombstone is never changed'); END;
CREATE TRIGGER erased_source_is_not_removed BEFORE DELETE ON erased_source
BEGIN SELECT raise(ABORT, 'a tombstone is never removed'); END;

-- The trail stays as it was written, but that the name of an erased file goes out of it.
DROP TRIGGER trail_is_not_changed;
CREATE TRIGGER trail_is_not_changed BEFORE UPDATE ON trail
WHEN NOT (NEW.id = OLD.id AND NEW.at_ms = OLD.at_ms AND NEW.actor_id = OLD.actor_id
	AND NEW.action = OLD.action AND NEW.subject = OLD.subject AND NEW.subject_id = OLD.subject_id
	AND NEW.detail = json_remove(OLD.detail, '$.fileName')
	AND EXISTS (SELECT 1 FROM erased_source e WHERE
		(OLD.subject = 'source' AND OLD.subject_id = e.sha256)
		OR (OLD.subject = 'ride' AND EXISTS
			(SELECT 1 FROM ride r WHERE r.sha256 = e.sha256 AND OLD.subject_id = CAST(r.id AS TEXT)))
		OR (OLD.subject = 'import' AND EXISTS
			(SELECT 1 FROM import i WHERE i.sha256 = e.sha256 AND OLD.subject_id = CAST(i.id AS TEXT)))))
BEGIN SELECT raise(ABORT, 'the trail is never changed'); END;
