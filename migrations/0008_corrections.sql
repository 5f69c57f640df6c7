-- What an owner has put in the place of rows of the tables that ship with the program. It only
-- grows: the newest of a row counts. Without content the shipped row counts again.
CREATE TABLE correction (
    table_name TEXT NOT NULL,
    row_key TEXT NOT NULL,
    content TEXT,
    set_by TEXT NOT NULL REFERENCES person (id),
    set_at TEXT NOT NULL,
    PRIMARY KEY (table_name, row_key, set_at)
);
