-- The week: who works and comes when, what is closed, and bookings that move.

-- Hours and places of a coach; priority, recovery, other coaches and standing slots of a client. JSON in the words of the open format.
ALTER TABLE coach ADD COLUMN work TEXT NOT NULL DEFAULT '{}';
ALTER TABLE client ADD COLUMN planning TEXT NOT NULL DEFAULT '{}';

-- A locked booking is never moved by a plan.
ALTER TABLE session ADD COLUMN is_locked INTEGER NOT NULL DEFAULT 0 CHECK (is_locked IN (0, 1));

-- Days on which the studio, a coach or some of a station is not there. Neither coach nor station: the studio is closed.
CREATE TABLE closure (
    id INTEGER PRIMARY KEY,
    first_day INTEGER NOT NULL,
    last_day INTEGER NOT NULL CHECK (last_day >= first_day),
    from_minute INTEGER NOT NULL CHECK (from_minute BETWEEN 0 AND 1439),
    to_minute INTEGER NOT NULL CHECK (to_minute BETWEEN 1 AND 1440),
    coach_id INTEGER REFERENCES coach (id),
    station TEXT,
    units INTEGER NOT NULL CHECK (units BETWEEN 0 AND 20),
    why TEXT NOT NULL,
    CHECK (to_minute > from_minute),
    CHECK (coach_id IS NULL OR station IS NULL)
) STRICT;
CREATE INDEX closure_by_day ON closure (last_day);

-- Where a booking lay before an act moved or locked it, so that the act can be taken back. JSON in the words of the open format.
CREATE TABLE booking_change (
    act_id INTEGER NOT NULL REFERENCES act (id),
    session_id INTEGER NOT NULL REFERENCES session (id),
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    PRIMARY KEY (act_id, session_id)
) STRICT, WITHOUT ROWID;

CREATE INDEX booking_change_by_session ON booking_change (session_id);
-- How often a session was changed is what its calendar entry counts.
CREATE INDEX session_change_by_session ON session_change (session_id);

CREATE TRIGGER booking_change_is_never_changed BEFORE UPDATE ON booking_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER booking_change_is_never_deleted BEFORE DELETE ON booking_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
