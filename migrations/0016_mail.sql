-- Who wants a mail about what waits for them, and what the last one told. Gone when the person is
-- erased.
CREATE TABLE mail (
    person TEXT PRIMARY KEY REFERENCES person (id),
    address TEXT NOT NULL,
    -- A short hash of each thing that was told, parted by spaces.
    told TEXT NOT NULL,
    told_at TEXT
);
