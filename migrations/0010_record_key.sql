-- The key that signs the records of this installation: its one row is made at the first need.
CREATE TABLE record_key (
    id BIGINT PRIMARY KEY CHECK (id = 1),
    -- 32 bytes of chance, as hexadecimal digits: whoever has them can sign in its name.
    seed TEXT NOT NULL,
    made_at TEXT NOT NULL
);
