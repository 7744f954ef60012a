-- Lines of a logger at its own rate stand beside those at one value a second.
-- seconds from one value to the next; what was there before has one a second
ALTER TABLE channel ADD COLUMN sample_s REAL NOT NULL DEFAULT 1 CHECK (sample_s > 0);
