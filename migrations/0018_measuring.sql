-- In which state of the piece a value was taken: 'before' or 'after' washing. NULL: in the state that
-- the numbers of the spec hold for.
ALTER TABLE measurement ADD COLUMN wash TEXT;

-- Why a point of a piece was not measured. The newest reason of a side counts, as long as that side
-- has no value.
CREATE TABLE skip (
    id TEXT PRIMARY KEY,
    round TEXT NOT NULL REFERENCES round (id),
    seq BIGINT NOT NULL,
    piece TEXT NOT NULL REFERENCES piece (id),
    point TEXT NOT NULL,
    reason TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    side TEXT NOT NULL CHECK (side IN ('brand', 'factory')),
    at TEXT NOT NULL,
    -- The sender's own key: the same key twice is one reason.
    key TEXT NOT NULL UNIQUE,
    UNIQUE (round, seq)
);

-- Photographs of a piece.
CREATE TABLE piece_photo (
    piece TEXT NOT NULL REFERENCES piece (id),
    seq BIGINT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    side TEXT NOT NULL CHECK (side IN ('brand', 'factory')),
    at TEXT NOT NULL,
    -- A private text of kind 'photo' whose content is the picture's digest.
    photo TEXT NOT NULL REFERENCES private_text (id),
    photo_hash TEXT NOT NULL,
    PRIMARY KEY (piece, seq)
);
