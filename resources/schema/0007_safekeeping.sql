-- What keeps a studio's data safe, private and shared: sealed texts, people from lists, records of who changed what, erasure, acts that are sent twice.

-- What the texts of a studio are sealed with, where its owner set a passphrase: a random key, which the passphrase opens.

CREATE TABLE sealing (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    wrapped_key BLOB NOT NULL
) STRICT;

-- How often a row that is written over has been written: its texts are sealed with that number, so that none of before stands for the present one.
CREATE TABLE sealed_version (
    place TEXT PRIMARY KEY,
    version INTEGER NOT NULL CHECK (version > 0)
) STRICT, WITHOUT ROWID;

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
CREATE TRIGGER owner_change_is_never_changed BEFORE UPDATE ON owner_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

-- What people did that is no act: forms, health, wishes, the studio's own settings, what left the studio. Rows are only ever added. `before` and
-- `after` are JSON with the fields that changed; of health data it names the fields and keeps no values.
CREATE TABLE audit (
    id INTEGER PRIMARY KEY,
    at_utc TEXT NOT NULL,
    coach_id INTEGER REFERENCES coach (id),
    client_id INTEGER REFERENCES client (id),
    what TEXT NOT NULL,
    before TEXT NOT NULL,
    after TEXT NOT NULL
) STRICT;
CREATE INDEX audit_by_client ON audit (client_id, at_utc);
CREATE INDEX act_by_client ON act (client_id);

-- Whose rows may go: filled and emptied inside of the transaction that erases a client, so that nobody else ever sees a row here.
CREATE TABLE erasing (
    client_id INTEGER PRIMARY KEY REFERENCES client (id)
) STRICT;

-- A client who was erased: a number in the place of the person.
CREATE TABLE erased_client (
    id INTEGER PRIMARY KEY,
    erased_day INTEGER NOT NULL
) STRICT;

-- What is kept for the accounts: when, how long, with whom, and whether it took place. No name and no content.
CREATE TABLE erased_session (
    id INTEGER PRIMARY KEY,
    erased_client_id INTEGER NOT NULL REFERENCES erased_client (id),
    coach_id INTEGER NOT NULL REFERENCES coach (id),
    day INTEGER NOT NULL,
    start_minute INTEGER NOT NULL CHECK (start_minute BETWEEN 0 AND 1439),
    minutes INTEGER NOT NULL CHECK (minutes BETWEEN 5 AND 480),
    kind TEXT NOT NULL,
    state TEXT NOT NULL
) STRICT;
CREATE INDEX erased_session_by_day ON erased_session (day, start_minute);

CREATE TRIGGER audit_is_never_changed BEFORE UPDATE ON audit
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
-- Only of a client who is being taken out, and has done nothing yet or is erased with all of it.
CREATE TRIGGER audit_is_never_deleted BEFORE DELETE ON audit
WHEN NOT EXISTS (SELECT 1 FROM erasing e WHERE e.client_id = OLD.client_id AND NOT EXISTS (SELECT 1 FROM act a WHERE a.client_id = OLD.client_id))
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

-- The log stays append-only, but for the rows of the client who is being erased.
DROP TRIGGER act_is_never_deleted;
CREATE TRIGGER act_is_never_deleted BEFORE DELETE ON act
WHEN NOT EXISTS (SELECT 1 FROM erasing e WHERE e.client_id = OLD.client_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
DROP TRIGGER event_is_never_deleted;
CREATE TRIGGER event_is_never_deleted BEFORE DELETE ON event
WHEN NOT EXISTS (SELECT 1 FROM erasing e JOIN lift l ON l.client_id = e.client_id WHERE l.id = OLD.lift_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
DROP TRIGGER event_set_is_never_deleted;
CREATE TRIGGER event_set_is_never_deleted BEFORE DELETE ON event_set
WHEN NOT EXISTS (SELECT 1 FROM erasing e JOIN lift l ON l.client_id = e.client_id JOIN event v ON v.lift_id = l.id WHERE v.id = OLD.event_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
DROP TRIGGER session_change_is_never_deleted;
CREATE TRIGGER session_change_is_never_deleted BEFORE DELETE ON session_change
WHEN NOT EXISTS (SELECT 1 FROM erasing e JOIN session s ON s.client_id = e.client_id WHERE s.id = OLD.session_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
DROP TRIGGER report_change_is_never_deleted;
CREATE TRIGGER report_change_is_never_deleted BEFORE DELETE ON report_change
WHEN NOT EXISTS (SELECT 1 FROM erasing e JOIN session s ON s.client_id = e.client_id WHERE s.id = OLD.session_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
DROP TRIGGER booking_change_is_never_deleted;
CREATE TRIGGER booking_change_is_never_deleted BEFORE DELETE ON booking_change
WHEN NOT EXISTS (SELECT 1 FROM erasing e JOIN session s ON s.client_id = e.client_id WHERE s.id = OLD.session_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
DROP TRIGGER decision_is_never_deleted;
CREATE TRIGGER decision_is_never_deleted BEFORE DELETE ON decision
WHEN NOT EXISTS (SELECT 1 FROM erasing e WHERE e.client_id = OLD.client_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
DROP TRIGGER plan_is_never_deleted;
CREATE TRIGGER plan_is_never_deleted BEFORE DELETE ON plan
WHEN NOT EXISTS (SELECT 1 FROM erasing e WHERE e.client_id = OLD.client_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
DROP TRIGGER tested_maximum_is_never_deleted;
CREATE TRIGGER tested_maximum_is_never_deleted BEFORE DELETE ON tested_maximum
WHEN NOT EXISTS (SELECT 1 FROM erasing e WHERE e.client_id = OLD.client_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER client_change_is_never_deleted BEFORE DELETE ON client_change
WHEN NOT EXISTS (SELECT 1 FROM erasing e WHERE e.client_id = OLD.client_id)
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER owner_change_is_never_deleted BEFORE DELETE ON owner_change
WHEN NOT EXISTS (SELECT 1 FROM erasing e WHERE e.client_id IN (OLD.client_before, OLD.client_after))
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

-- A word of its own for every act, that whoever asks for it makes up. What was sent and not answered is sent again under the same token; the
-- studio refuses the second one. Acts from before have none.
ALTER TABLE act ADD COLUMN token TEXT;
CREATE UNIQUE INDEX act_is_done_once ON act (token) WHERE token IS NOT NULL;

-- Who signs in at the front desk is somebody too, whose name stands beside what they did; but takes no sessions, and has no column in a week.
ALTER TABLE coach ADD COLUMN is_coaching INTEGER NOT NULL DEFAULT 1 CHECK (is_coaching IN (0, 1));
