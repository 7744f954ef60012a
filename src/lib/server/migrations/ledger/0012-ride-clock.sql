-- What the recording itself said of its start, once a person corrected or confirmed its clock; started_ms is
-- what counts. NULL = nobody was asked.
ALTER TABLE ride ADD COLUMN recorded_start_ms INTEGER;
