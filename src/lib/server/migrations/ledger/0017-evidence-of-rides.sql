-- What else is told of a change of the evidence (0002): how many of the changes are about one ride alone, how many the
-- queue made by itself, and how often a person wrote something down. A change that is counted in none of these may
-- concern everything.
ALTER TABLE evidence ADD COLUMN of_rides INTEGER NOT NULL DEFAULT 0;
ALTER TABLE evidence ADD COLUMN by_queue INTEGER NOT NULL DEFAULT 0;
ALTER TABLE evidence ADD COLUMN by_people INTEGER NOT NULL DEFAULT 0;

-- When the evidence of a ride changed last, as the count of changes stood: what is known of all others need not be
-- read again. A ride that is gone keeps its row, so that it is seen to be gone.
CREATE TABLE evidence_ride (
	ride_id INTEGER PRIMARY KEY,
	changed_at INTEGER NOT NULL
) STRICT;
-- (taken out and put in again below: what a statement does about a conflict holds in its triggers as well)
CREATE INDEX evidence_ride_by_change ON evidence_ride (changed_at);

-- a ride is described with the one that it is a copy of
CREATE INDEX ride_by_twin ON ride (twin_of) WHERE twin_of IS NOT NULL;

-- a file that is handed in is nobody's judgement: it is the queue's; who only gives a name has said nothing either
CREATE TRIGGER evidence_by_people AFTER INSERT ON trail
	WHEN NEW.action NOT IN ('stored', 'handed in', 'handed in an archive', 'chose a name')
BEGIN UPDATE evidence SET by_people = by_people + 1; END;

-- nothing is told of somebody before a ride, a verdict or a build names him, and each of these counts
DROP TRIGGER evidence_person_added;

CREATE TRIGGER evidence_of_ride_by_ride_added AFTER INSERT ON ride
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.id;
	INSERT INTO evidence_ride VALUES (NEW.id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_ride_changed AFTER UPDATE ON ride
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.id;
	INSERT INTO evidence_ride VALUES (NEW.id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_ride_removed AFTER DELETE ON ride
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.id;
	INSERT INTO evidence_ride VALUES (OLD.id, (SELECT changes FROM evidence));
END;

CREATE TRIGGER evidence_of_ride_by_result_added AFTER INSERT ON result
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_result_changed AFTER UPDATE ON result
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_result_removed AFTER DELETE ON result
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.ride_id;
	INSERT INTO evidence_ride VALUES (OLD.ride_id, (SELECT changes FROM evidence));
END;

CREATE TRIGGER evidence_of_ride_by_slip_event_added AFTER INSERT ON slip_event
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_slip_event_changed AFTER UPDATE ON slip_event
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_slip_event_removed AFTER DELETE ON slip_event
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.ride_id;
	INSERT INTO evidence_ride VALUES (OLD.ride_id, (SELECT changes FROM evidence));
END;

CREATE TRIGGER evidence_of_ride_by_verdict_added AFTER INSERT ON verdict
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_verdict_changed AFTER UPDATE ON verdict
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_verdict_removed AFTER DELETE ON verdict
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.ride_id;
	INSERT INTO evidence_ride VALUES (OLD.ride_id, (SELECT changes FROM evidence));
END;

CREATE TRIGGER evidence_of_ride_by_derivation_added AFTER INSERT ON derivation
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_derivation_changed AFTER UPDATE ON derivation
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_derivation_removed AFTER DELETE ON derivation
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.ride_id;
	INSERT INTO evidence_ride VALUES (OLD.ride_id, (SELECT changes FROM evidence));
END;

CREATE TRIGGER evidence_of_ride_by_ride_cut_added AFTER INSERT ON ride_cut
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_ride_cut_changed AFTER UPDATE ON ride_cut
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_ride_cut_removed AFTER DELETE ON ride_cut
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.ride_id;
	INSERT INTO evidence_ride VALUES (OLD.ride_id, (SELECT changes FROM evidence));
END;

CREATE TRIGGER evidence_of_ride_by_ride_part_added AFTER INSERT ON ride_part
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_ride_part_changed AFTER UPDATE ON ride_part
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_ride_part_removed AFTER DELETE ON ride_part
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.ride_id;
	INSERT INTO evidence_ride VALUES (OLD.ride_id, (SELECT changes FROM evidence));
END;

CREATE TRIGGER evidence_of_ride_by_rider_mark_answer_added AFTER INSERT ON rider_mark_answer
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_rider_mark_answer_changed AFTER UPDATE ON rider_mark_answer
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_rider_mark_answer_removed AFTER DELETE ON rider_mark_answer
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.ride_id;
	INSERT INTO evidence_ride VALUES (OLD.ride_id, (SELECT changes FROM evidence));
END;

CREATE TRIGGER evidence_of_ride_by_insertion_test_added AFTER INSERT ON insertion_test
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = NEW.ride_id;
	INSERT INTO evidence_ride VALUES (NEW.ride_id, (SELECT changes FROM evidence));
END;
CREATE TRIGGER evidence_of_ride_by_insertion_test_removed AFTER DELETE ON insertion_test
BEGIN
	UPDATE evidence SET of_rides = of_rides + 1;
	DELETE FROM evidence_ride WHERE ride_id = OLD.ride_id;
	INSERT INTO evidence_ride VALUES (OLD.ride_id, (SELECT changes FROM evidence));
END;
