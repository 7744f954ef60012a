-- Counts every change of what statistics are made of. Whoever has computed something from all rides may
-- keep it as long as this number stands, whichever process made the change.
CREATE TABLE evidence (
	id INTEGER PRIMARY KEY CHECK (id = 1),
	changes INTEGER NOT NULL
) STRICT;
INSERT INTO evidence VALUES (1, 0);

CREATE TRIGGER evidence_ride_added AFTER INSERT ON ride
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_ride_changed AFTER UPDATE ON ride
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_ride_removed AFTER DELETE ON ride
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_result_added AFTER INSERT ON result
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_result_changed AFTER UPDATE ON result
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_result_removed AFTER DELETE ON result
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_slip_event_added AFTER INSERT ON slip_event
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_slip_event_changed AFTER UPDATE ON slip_event
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_slip_event_removed AFTER DELETE ON slip_event
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_fitted_period_added AFTER INSERT ON fitted_period
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_fitted_period_changed AFTER UPDATE ON fitted_period
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_fitted_period_removed AFTER DELETE ON fitted_period
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_person_added AFTER INSERT ON person
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_person_changed AFTER UPDATE ON person
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_person_removed AFTER DELETE ON person
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_derivation_added AFTER INSERT ON derivation
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_derivation_changed AFTER UPDATE ON derivation
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_derivation_removed AFTER DELETE ON derivation
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_wheel_added AFTER INSERT ON wheel
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_wheel_changed AFTER UPDATE ON wheel
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_wheel_removed AFTER DELETE ON wheel
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_build_added AFTER INSERT ON build
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_build_changed AFTER UPDATE ON build
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_build_removed AFTER DELETE ON build
BEGIN UPDATE evidence SET changes = changes + 1; END;

CREATE TRIGGER evidence_verdict_added AFTER INSERT ON verdict
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_verdict_changed AFTER UPDATE ON verdict
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_verdict_removed AFTER DELETE ON verdict
BEGIN UPDATE evidence SET changes = changes + 1; END;

-- the current analysis version is a setting
CREATE TRIGGER evidence_setting_added AFTER INSERT ON setting WHEN NEW.name = 'analysisVersion'
BEGIN UPDATE evidence SET changes = changes + 1; END;
CREATE TRIGGER evidence_setting_changed AFTER UPDATE ON setting WHEN NEW.name = 'analysisVersion'
BEGIN UPDATE evidence SET changes = changes + 1; END;
