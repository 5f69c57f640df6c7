-- What the code on a print leads to: one word for each revision and factory, that nobody guesses.
-- Nothing else is told of whoever holds the paper; the word stays when a share ends, since the paper
-- stays too.
CREATE TABLE print_code (
    code TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    -- 0: the draft.
    revision BIGINT NOT NULL,
    -- Whom it was printed for; empty for the brand itself.
    org TEXT NOT NULL,
    made_at TEXT NOT NULL,
    UNIQUE (style, revision, org)
);
