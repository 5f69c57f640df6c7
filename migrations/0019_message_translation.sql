-- What somebody put beside a message in another language. The newest of a language is shown, above it
-- always the message itself.
CREATE TABLE message_translation (
    id TEXT PRIMARY KEY,
    message TEXT NOT NULL REFERENCES message (id),
    -- BCP 47.
    language TEXT NOT NULL,
    person TEXT NOT NULL REFERENCES person (id),
    side TEXT NOT NULL CHECK (side IN ('brand', 'factory')),
    at TEXT NOT NULL,
    -- Kept as the message's own writer's: erasing their words takes along what was made of them.
    text TEXT NOT NULL REFERENCES private_text (id),
    text_hash TEXT NOT NULL
);
CREATE INDEX message_translation_message ON message_translation (message);
