-- Since when the brand keeps a style as what others may begin with; nothing where it does not.
ALTER TABLE style ADD COLUMN start_since TEXT;
