-- People who come from somebody's lists, and records of one person that become one.

-- A withdrawn client is shown nowhere: an import brought them and was taken back, or they were merged into another. What was kept of them stays on file.
ALTER TABLE client ADD COLUMN is_withdrawn INTEGER NOT NULL DEFAULT 0 CHECK (is_withdrawn IN (0, 1));

-- Where an import of people came from, in words: the names of its files. Imports of whole studios have none, and are never taken back.
CREATE TABLE import_source (
    act_id INTEGER PRIMARY KEY REFERENCES act (id),
    source TEXT NOT NULL
) STRICT;

-- What of a client's own facts an act changed, so that the act can be taken back. JSON.
CREATE TABLE client_change (
    act_id INTEGER NOT NULL REFERENCES act (id),
    client_id INTEGER NOT NULL REFERENCES client (id),
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    PRIMARY KEY (act_id, client_id)
) STRICT, WITHOUT ROWID;
CREATE INDEX client_change_by_client ON client_change (client_id);

-- Whose a lift, a session or a caution was before an act gave it to another client.
CREATE TABLE owner_change (
    act_id INTEGER NOT NULL REFERENCES act (id),
    thing TEXT NOT NULL,
    thing_id INTEGER NOT NULL,
    client_before INTEGER NOT NULL REFERENCES client (id),
    client_after INTEGER NOT NULL REFERENCES client (id),
    PRIMARY KEY (act_id, thing, thing_id)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER import_source_is_never_changed BEFORE UPDATE ON import_source
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER import_source_is_never_deleted BEFORE DELETE ON import_source
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER client_change_is_never_changed BEFORE UPDATE ON client_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER client_change_is_never_deleted BEFORE DELETE ON client_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER owner_change_is_never_changed BEFORE UPDATE ON owner_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER owner_change_is_never_deleted BEFORE DELETE ON owner_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
