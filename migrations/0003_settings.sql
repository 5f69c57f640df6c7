-- What an installation is set up with, by name; each as JSON.
CREATE TABLE setting (
    name TEXT PRIMARY KEY,
    content TEXT NOT NULL,
    set_by TEXT NOT NULL REFERENCES person (id),
    set_at TEXT NOT NULL
);
