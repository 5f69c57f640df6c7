-- What a factory says of the pieces of a round as it sends them. Rounds that were sent before this
-- table have no row.
CREATE TABLE dispatch (
    round TEXT PRIMARY KEY REFERENCES round (id),
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    -- 'actual' or 'substitute'.
    materials TEXT NOT NULL,
    -- With substitutes: which, and in the place of what; else empty.
    substitutes TEXT NOT NULL REFERENCES private_text (id),
    substitutes_hash TEXT NOT NULL,
    -- Courier and number; may be empty.
    parcel TEXT NOT NULL REFERENCES private_text (id),
    parcel_hash TEXT NOT NULL
);
