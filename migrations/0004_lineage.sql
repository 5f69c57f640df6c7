-- The style that one was begun from, as it was written then. Approvals are never copied.
ALTER TABLE style ADD COLUMN copied_from TEXT REFERENCES style (id);
