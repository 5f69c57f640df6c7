-- One text for SQLite and PostgreSQL: TEXT ids, fixed-width UTC text for time, JSON as TEXT.
-- Migrations only CREATE and ADD COLUMN (rebuilding a parent table on SQLite deletes its children).

-- Who they are ---------------------------------------------------------------------------------

CREATE TABLE organisation (
    id TEXT PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind IN ('brand', 'factory')),
    name TEXT NOT NULL,
    -- Counts how often its people were renamed: pages that show names are kept until it moves.
    renamings BIGINT NOT NULL DEFAULT 0,
    made_at TEXT NOT NULL
);

CREATE TABLE person (
    id TEXT PRIMARY KEY,
    org TEXT NOT NULL REFERENCES organisation (id),
    role TEXT NOT NULL,
    language TEXT NOT NULL,
    made_at TEXT NOT NULL,
    -- Set when somebody may no longer come in; what they did stays.
    left_at TEXT
);

-- Salt and content of every personal text and name. Ledger entries and messages hold only the
-- hash of the two, so erasing here leaves every chain whole. No other table holds personal text.
CREATE TABLE private_text (
    id TEXT PRIMARY KEY,
    person TEXT NOT NULL REFERENCES person (id),
    kind TEXT NOT NULL CHECK (kind IN ('name', 'login', 'message', 'photo', 'signed_name')),
    salt TEXT NOT NULL,
    content TEXT,
    erased_at TEXT
);
CREATE INDEX private_text_person ON private_text (person, kind);
CREATE UNIQUE INDEX private_text_login ON private_text (content) WHERE kind = 'login';
CREATE UNIQUE INDEX private_text_name ON private_text (person) WHERE kind = 'name';

CREATE TABLE password (
    person TEXT PRIMARY KEY REFERENCES person (id),
    hash TEXT NOT NULL,
    set_at TEXT NOT NULL
);

-- Tokens are stored as their SHA-256 only.
CREATE TABLE session (
    token_hash TEXT PRIMARY KEY,
    person TEXT NOT NULL REFERENCES person (id),
    made_at TEXT NOT NULL,
    seen_at TEXT NOT NULL,
    ends_at TEXT NOT NULL
);
CREATE INDEX session_person ON session (person);

-- A way in that works once: an invitation, a new link for somebody who lost theirs, a short code
-- for a second device, or the set-up link of a new installation (person NULL).
CREATE TABLE way_in (
    token_hash TEXT PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind IN ('link', 'code', 'set_up')),
    person TEXT REFERENCES person (id),
    made_at TEXT NOT NULL,
    ends_at TEXT NOT NULL,
    used_at TEXT
);
CREATE INDEX way_in_person ON way_in (person);

-- Styles and their drafts ----------------------------------------------------------------------

CREATE TABLE style (
    id TEXT PRIMARY KEY,
    -- Copies of the draft header's fields, for lists and for uniqueness.
    number TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL REFERENCES person (id)
);

-- The first statement of every act bumps seq: that row is the style's lock in both databases.
CREATE TABLE ledger_head (
    style TEXT PRIMARY KEY REFERENCES style (id),
    seq BIGINT NOT NULL,
    hash TEXT NOT NULL
);

-- Append only. `body` is the exact canonical text that was hashed.
CREATE TABLE ledger (
    style TEXT NOT NULL REFERENCES style (id),
    seq BIGINT NOT NULL,
    at TEXT NOT NULL,
    act TEXT NOT NULL,
    person TEXT REFERENCES person (id),
    -- The factory that may read this entry; NULL: the brand and every factory it is shared with.
    visible_to TEXT REFERENCES organisation (id),
    -- Internal to the brand.
    internal BOOLEAN NOT NULL,
    body TEXT NOT NULL,
    hash TEXT NOT NULL,
    PRIMARY KEY (style, seq)
);

CREATE TABLE draft_section (
    style TEXT NOT NULL REFERENCES style (id),
    section TEXT NOT NULL,
    version BIGINT NOT NULL,
    content TEXT NOT NULL,
    saved_by TEXT NOT NULL REFERENCES person (id),
    saved_at TEXT NOT NULL,
    PRIMARY KEY (style, section)
);

-- Every save that was made, the losing ones included: a losing save is kept until it is resolved.
CREATE TABLE draft_save (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    section TEXT NOT NULL,
    -- The version that the writer had before them.
    base BIGINT NOT NULL,
    -- The version that it became; NULL: it lost.
    version BIGINT,
    content TEXT NOT NULL,
    saved_by TEXT NOT NULL REFERENCES person (id),
    saved_at TEXT NOT NULL,
    resolved_at TEXT
);
CREATE UNIQUE INDEX draft_save_version ON draft_save (style, section, version);
CREATE INDEX draft_save_lost ON draft_save (style, saved_by);

-- Files ----------------------------------------------------------------------------------------

-- Bytes lie in the content-addressed folder. `kind` says whether the original is kept (drawing,
-- artwork) or only what was made of it (photo).
CREATE TABLE file (
    digest TEXT PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind IN ('drawing', 'photo', 'picture')),
    media_type TEXT NOT NULL,
    name TEXT NOT NULL,
    size BIGINT NOT NULL,
    width BIGINT NOT NULL,
    height BIGINT NOT NULL,
    -- When a photograph says it was taken, as the camera wrote it.
    taken TEXT,
    made_at TEXT NOT NULL
);

-- Smaller or sanitised pictures made of a file.
CREATE TABLE picture (
    of_file TEXT NOT NULL REFERENCES file (digest),
    width BIGINT NOT NULL,
    height BIGINT NOT NULL,
    media_type TEXT NOT NULL,
    digest TEXT NOT NULL,
    PRIMARY KEY (of_file, width)
);
CREATE INDEX picture_digest ON picture (digest);

-- Where a file is used decides who may fetch it.
CREATE TABLE file_use (
    style TEXT NOT NULL REFERENCES style (id),
    file TEXT NOT NULL REFERENCES file (digest),
    -- In a draft (0) or in a published revision.
    revision BIGINT NOT NULL,
    -- A photograph in the exchange with one factory; '' for files of the spec.
    org TEXT NOT NULL,
    PRIMARY KEY (style, file, revision, org)
);

-- Revisions ------------------------------------------------------------------------------------

CREATE TABLE revision (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    number BIGINT NOT NULL,
    format BIGINT NOT NULL,
    -- The exact bytes that were hashed; never serialised again.
    bytes BYTEA NOT NULL,
    digest TEXT NOT NULL,
    published_at TEXT NOT NULL,
    published_by TEXT NOT NULL REFERENCES person (id),
    UNIQUE (style, number)
);

-- Which version of each section the newest revision was made of, to tell whether a draft moved.
CREATE TABLE revision_section (
    revision TEXT NOT NULL REFERENCES revision (id),
    section TEXT NOT NULL,
    version BIGINT NOT NULL,
    PRIMARY KEY (revision, section)
);

CREATE TABLE withdrawal (
    revision TEXT PRIMARY KEY REFERENCES revision (id),
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    reason TEXT NOT NULL
);

CREATE TABLE share (
    style TEXT NOT NULL REFERENCES style (id),
    org TEXT NOT NULL REFERENCES organisation (id),
    shared_at TEXT NOT NULL,
    shared_by TEXT NOT NULL REFERENCES person (id),
    ended_at TEXT,
    PRIMARY KEY (style, org)
);
CREATE INDEX share_org ON share (org);

CREATE TABLE acknowledgement (
    revision TEXT NOT NULL REFERENCES revision (id),
    org TEXT NOT NULL REFERENCES organisation (id),
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    PRIMARY KEY (revision, org)
);

-- Threads --------------------------------------------------------------------------------------

CREATE TABLE thread (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    -- The factory it is with. A thread never has two.
    org TEXT NOT NULL REFERENCES organisation (id),
    item TEXT NOT NULL,
    revision BIGINT NOT NULL,
    kind TEXT NOT NULL,
    asked_by TEXT NOT NULL REFERENCES person (id),
    asked_side TEXT NOT NULL CHECK (asked_side IN ('brand', 'factory')),
    -- The round whose decision made it, for a must-fix that a sample brought up.
    round TEXT,
    made_at TEXT NOT NULL,
    state TEXT NOT NULL,
    -- The revision that carries the change.
    changed_in BIGINT,
    moved_at TEXT NOT NULL
);
CREATE INDEX thread_style ON thread (style, org);

CREATE TABLE message (
    id TEXT PRIMARY KEY,
    thread TEXT NOT NULL REFERENCES thread (id),
    seq BIGINT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    side TEXT NOT NULL CHECK (side IN ('brand', 'factory')),
    at TEXT NOT NULL,
    language TEXT NOT NULL,
    text TEXT NOT NULL REFERENCES private_text (id),
    text_hash TEXT NOT NULL,
    UNIQUE (thread, seq)
);

CREATE TABLE message_photo (
    message TEXT NOT NULL REFERENCES message (id),
    seq BIGINT NOT NULL,
    -- A private text of kind 'photo' whose content is the picture's digest.
    photo TEXT NOT NULL REFERENCES private_text (id),
    photo_hash TEXT NOT NULL,
    PRIMARY KEY (message, seq)
);

-- Samples --------------------------------------------------------------------------------------

CREATE TABLE round (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    org TEXT NOT NULL REFERENCES organisation (id),
    revision TEXT NOT NULL REFERENCES revision (id),
    number BIGINT NOT NULL,
    kind TEXT NOT NULL,
    state TEXT NOT NULL,
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL REFERENCES person (id),
    moved_at TEXT NOT NULL,
    -- The newest revision for which the brand chose to go on with this round.
    continued_at BIGINT,
    UNIQUE (style, org, number)
);
CREATE INDEX round_org ON round (org);

CREATE TABLE piece (
    id TEXT PRIMARY KEY,
    round TEXT NOT NULL REFERENCES round (id),
    number BIGINT NOT NULL,
    size TEXT NOT NULL,
    UNIQUE (round, number)
);

-- Append only: the newest of a piece, point and side counts, the older ones stay.
CREATE TABLE measurement (
    id TEXT PRIMARY KEY,
    round TEXT NOT NULL REFERENCES round (id),
    seq BIGINT NOT NULL,
    piece TEXT NOT NULL REFERENCES piece (id),
    point TEXT NOT NULL,
    nm BIGINT NOT NULL,
    unit TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    side TEXT NOT NULL CHECK (side IN ('brand', 'factory')),
    at TEXT NOT NULL,
    -- The sender's own key: the same key twice is one measurement.
    key TEXT NOT NULL UNIQUE,
    UNIQUE (round, seq)
);
CREATE INDEX measurement_piece ON measurement (piece, point);

CREATE TABLE decision (
    id TEXT PRIMARY KEY,
    round TEXT NOT NULL UNIQUE REFERENCES round (id),
    outcome TEXT NOT NULL,
    at TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    reason TEXT NOT NULL REFERENCES private_text (id),
    reason_hash TEXT NOT NULL
);

-- Signatures -----------------------------------------------------------------------------------

CREATE TABLE signature (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    -- 'revision' or 'round', and its id.
    subject TEXT NOT NULL CHECK (subject IN ('revision', 'round')),
    subject_id TEXT NOT NULL,
    -- The factory it is signed with or by.
    org TEXT NOT NULL REFERENCES organisation (id),
    side TEXT NOT NULL CHECK (side IN ('brand', 'factory')),
    person TEXT NOT NULL REFERENCES person (id),
    role TEXT NOT NULL,
    at TEXT NOT NULL,
    local_time TEXT NOT NULL,
    -- The digest of the revision; for a round, of its record.
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
