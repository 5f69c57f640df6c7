-- What the brand had translated beside the words of a style, a row for each time that it was saved.
-- The newest of a language and its words counts.
CREATE TABLE translation (
    id TEXT PRIMARY KEY,
    style TEXT NOT NULL REFERENCES style (id),
    -- BCP 47.
    language TEXT NOT NULL,
    -- A JSON object: the words and their translation; an empty one takes it back.
    content TEXT NOT NULL,
    set_by TEXT NOT NULL REFERENCES person (id),
    set_at TEXT NOT NULL
);
CREATE INDEX translation_style ON translation (style);
