-- What was published, said, measured, signed or decided only grows. PostgreSQL.
-- For each statement, not each row: TRUNCATE is refused too, and a statement that finds no row.
-- Two programs that start at once take turns; the lock goes with this text's one transaction.
SELECT pg_advisory_xact_lock(6310722441);

CREATE OR REPLACE FUNCTION only_grows() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'the table % only grows', TG_TABLE_NAME;
END $$;

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON revision
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON withdrawal
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON acknowledgement
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON message
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON message_photo
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON measurement
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON signature
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON decision
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();

CREATE OR REPLACE TRIGGER only_grows BEFORE UPDATE OR DELETE OR TRUNCATE ON ledger
    FOR EACH STATEMENT EXECUTE FUNCTION only_grows();
