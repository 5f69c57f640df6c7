-- Inspections of finished lots against a sealed sample.
CREATE TABLE inspection (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    seal TEXT NOT NULL REFERENCES seal (id),
    org TEXT NOT NULL REFERENCES organisation (id),
    -- Through the style's inspections with this factory, from 1.
    number BIGINT NOT NULL,
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    -- How many pieces of which colourway and size, as JSON.
    lot TEXT NOT NULL,
    level TEXT NOT NULL,
    aql_major TEXT NOT NULL,
    aql_minor TEXT NOT NULL,
    -- The inspection of the same lot before it was mended.
    follows TEXT UNIQUE REFERENCES inspection (id),
    UNIQUE (style, org, number)
);

-- A piece as it was entered; the newest of a piece counts.
CREATE TABLE inspection_entry (
    id TEXT PRIMARY KEY,
    inspection TEXT NOT NULL REFERENCES inspection (id),
    seq BIGINT NOT NULL,
    -- In the order in which pieces are drawn, from 1.
    piece BIGINT NOT NULL,
    colourway TEXT NOT NULL,
    size TEXT NOT NULL,
    -- What was measured, as typed in: JSON of points with length and unit.
    measured TEXT NOT NULL,
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    -- Of the words of its defects.
    language TEXT NOT NULL,
    -- The sender's own: the same key twice is one entry.
    key TEXT NOT NULL UNIQUE,
    UNIQUE (inspection, seq)
);

CREATE TABLE inspection_defect (
    entry TEXT NOT NULL REFERENCES inspection_entry (id),
    seq BIGINT NOT NULL,
    class TEXT NOT NULL,
    -- What of the spec it is on.
    item TEXT,
    times BIGINT NOT NULL,
    words TEXT NOT NULL REFERENCES private_text (id),
    words_hash TEXT NOT NULL,
    PRIMARY KEY (entry, seq)
);

CREATE TABLE inspection_conclusion (
    inspection TEXT PRIMARY KEY REFERENCES inspection (id),
    outcome TEXT NOT NULL,
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    -- The digest of the entries that it rests on.
    entries TEXT NOT NULL,
    critical BIGINT NOT NULL,
    major BIGINT NOT NULL,
    minor BIGINT NOT NULL
);

CREATE TABLE inspection_decision (
    inspection TEXT PRIMARY KEY REFERENCES inspection (id),
    decision TEXT NOT NULL,
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    reason TEXT NOT NULL REFERENCES private_text (id),
    reason_hash TEXT NOT NULL
);
