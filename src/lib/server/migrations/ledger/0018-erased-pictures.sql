-- Pictures and documents that a person attached go with an erasure too: a photo carries the place where it was
-- taken and the camera's serial. Their names may then leave the trail, as those of ride files may.
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
			(SELECT 1 FROM import i WHERE i.sha256 = e.sha256 AND OLD.subject_id = CAST(i.id AS TEXT)))
		OR EXISTS (SELECT 1 FROM attachment a
			WHERE a.sha256 = e.sha256 AND a.id = json_extract(OLD.detail, '$.attachment'))))
BEGIN SELECT raise(ABORT, 'the trail is never changed'); END;
