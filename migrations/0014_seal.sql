-- Pieces of an approved round that both sides keep, and judge the bulk by.
CREATE TABLE seal (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    round TEXT NOT NULL UNIQUE REFERENCES round (id),
    org TEXT NOT NULL REFERENCES organisation (id),
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    -- The digest of the round's record when it was sealed.
    round_record TEXT NOT NULL,
    -- The options and the concessions that it rests on: JSON lists of ids.
    approvals TEXT NOT NULL,
    concessions TEXT NOT NULL
);
CREATE INDEX seal_style ON seal (style, org);

CREATE TABLE seal_piece (
    seal TEXT NOT NULL REFERENCES seal (id),
    piece TEXT NOT NULL REFERENCES piece (id),
    -- The number on its seal.
    tag TEXT NOT NULL,
    keeper TEXT NOT NULL CHECK (keeper IN ('brand', 'factory')),
    -- Where and by whom it is kept.
    place TEXT NOT NULL REFERENCES private_text (id),
    place_hash TEXT NOT NULL,
    PRIMARY KEY (seal, piece),
    UNIQUE (seal, tag)
);

-- A seal is signed too. Nothing points to this table, and its check named what there was to sign: it
-- is made again without one, since neither database can change a check alone.
CREATE TABLE signature_now (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    -- 'revision', 'round' or 'seal', and its id.
    subject TEXT NOT NULL,
    subject_id TEXT NOT NULL,
    -- The factory it is signed with or by.
    org TEXT NOT NULL REFERENCES organisation (id),
    side TEXT NOT NULL CHECK (side IN ('brand', 'factory')),
    person TEXT NOT NULL REFERENCES person (id),
    role TEXT NOT NULL,
    at TEXT NOT NULL,
    local_time TEXT NOT NULL,
    -- The digest of the revision; for a round or a seal, of its record.
    digest TEXT NOT NULL,
    language TEXT NOT NULL,
    -- The digest of the statement and figures that were on the screen.
    screen TEXT NOT NULL,
    statement TEXT NOT NULL,
    name TEXT NOT NULL REFERENCES private_text (id),
    name_hash TEXT NOT NULL,
    -- The ledger's head before this signature.
    chain TEXT NOT NULL,
    UNIQUE (subject, subject_id, org, side)
);

INSERT INTO signature_now (id, style, subject, subject_id, org, side, person, role, at, local_time,
    digest, language, screen, statement, name, name_hash, chain)
SELECT id, style, subject, subject_id, org, side, person, role, at, local_time,
    digest, language, screen, statement, name, name_hash, chain FROM signature;

DROP TABLE signature;

ALTER TABLE signature_now RENAME TO signature;
