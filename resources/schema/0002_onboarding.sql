-- What is asked and looked at when a client begins, and whenever it changes.

-- Forms of a client: a profile, health intakes, measures, movement screens, field tests, starting plans. One that is not finished is written over
-- as it is filled in; a finished one stays as it is, and what changes later is a form of its own. The detail is JSON in the words of the open format.
CREATE TABLE form (
    id INTEGER PRIMARY KEY,
    client_id INTEGER NOT NULL REFERENCES client (id),
    kind TEXT NOT NULL,
    day INTEGER NOT NULL,
    is_finished INTEGER NOT NULL CHECK (is_finished IN (0, 1)),
    detail TEXT NOT NULL
) STRICT;
CREATE INDEX form_by_client ON form (client_id, kind, day);
CREATE UNIQUE INDEX form_is_open_once ON form (client_id, kind) WHERE is_finished = 0;

CREATE TRIGGER finished_form_is_never_changed BEFORE UPDATE ON form WHEN OLD.is_finished = 1
BEGIN SELECT RAISE(ABORT, 'a finished form is never changed'); END;

-- A doctor's answers, with a copy where there is one. `findings` are the marks of the intake that it answers.
CREATE TABLE letter (
    id INTEGER PRIMARY KEY,
    client_id INTEGER NOT NULL REFERENCES client (id),
    written_by TEXT NOT NULL CHECK (written_by <> ''),
    day INTEGER NOT NULL,
    valid_until_day INTEGER,
    limits TEXT NOT NULL,
    findings TEXT NOT NULL,
    file_name TEXT NOT NULL,
    file BLOB
) STRICT;
CREATE INDEX letter_by_client ON letter (client_id, day);

ALTER TABLE clearance ADD COLUMN granted_by TEXT NOT NULL DEFAULT '';
-- When the coach wants to be reminded of a letter that is awaited.
ALTER TABLE clearance ADD COLUMN remind_day INTEGER;

CREATE TABLE plan_template (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE CHECK (name <> ''),
    detail TEXT NOT NULL
) STRICT;

-- The studio's own figures, where they are not those by default. JSON.
ALTER TABLE studio ADD COLUMN settings TEXT NOT NULL DEFAULT '{}';

-- The lifts that a session was planned with, in the order in which they are done. A session without any takes those that waited longest.
CREATE TABLE session_lift (
    session_id INTEGER NOT NULL REFERENCES session (id),
    position INTEGER NOT NULL CHECK (position >= 0),
    lift_id INTEGER NOT NULL REFERENCES lift (id),
    PRIMARY KEY (session_id, position)
) STRICT, WITHOUT ROWID;
