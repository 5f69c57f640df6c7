-- How a point is measured, as the brand words it, under a name; the content is JSON. A point takes a
-- copy.
CREATE TABLE wording (
    name TEXT PRIMARY KEY,
    content TEXT NOT NULL,
    kept_by TEXT NOT NULL REFERENCES person (id),
    kept_at TEXT NOT NULL
);
