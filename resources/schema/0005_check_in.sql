-- The check-in: what was decided, and how often a client comes in one week.

-- What was decided at a check-in. Rows are only ever added: an undo replaces one by a void one, a redo that by one that
-- counts again. The root is the first version, whose act is that of the decision.
CREATE TABLE decision (
    id INTEGER PRIMARY KEY,
    root_id INTEGER REFERENCES decision (id),
    replaces_id INTEGER REFERENCES decision (id),
    act_id INTEGER NOT NULL REFERENCES act (id),
    is_void INTEGER NOT NULL CHECK (is_void IN (0, 1)),
    client_id INTEGER NOT NULL REFERENCES client (id),
    lift_id INTEGER REFERENCES lift (id),
    day INTEGER NOT NULL,
    about TEXT NOT NULL,
    choice TEXT NOT NULL,
    note TEXT NOT NULL,
    next_review_day INTEGER NOT NULL CHECK (next_review_day > day),
    CHECK ((root_id IS NULL) = (replaces_id IS NULL))
) STRICT;
CREATE INDEX decision_by_client ON decision (client_id, day);
CREATE INDEX decision_by_day ON decision (day);
CREATE INDEX decision_by_act ON decision (act_id);
CREATE UNIQUE INDEX decision_is_replaced_once ON decision (replaces_id) WHERE replaces_id IS NOT NULL;

CREATE TRIGGER decision_is_never_changed BEFORE UPDATE ON decision
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER decision_is_never_deleted BEFORE DELETE ON decision
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

-- How many sessions a client wants in the week of a Monday, where that is not the usual number.
CREATE TABLE week_quota (
    client_id INTEGER NOT NULL REFERENCES client (id),
    monday INTEGER NOT NULL CHECK (monday % 7 = 4),
    sessions INTEGER NOT NULL CHECK (sessions BETWEEN 0 AND 7),
    PRIMARY KEY (client_id, monday)
) STRICT, WITHOUT ROWID;
CREATE INDEX week_quota_by_monday ON week_quota (monday);

-- What the plateau detector is told of each lift, in the form of core/store/lift_log_codec: a cache like the others, built from the log of events.
CREATE TABLE lift_log (
    lift_id INTEGER PRIMARY KEY REFERENCES lift (id),
    log BLOB
) STRICT;
