-- What is said once of a session, besides the results of its lifts.

-- How the client came in and how the session was. Nothing where it was not asked. Sleep: 1 bad to 5 good; soreness and stress: 1 none to 5 much.
-- The effort of the whole session is in tenths of a point of a scale from 0 to 10.
CREATE TABLE session_report (
    session_id INTEGER PRIMARY KEY REFERENCES session (id),
    sleep INTEGER CHECK (sleep BETWEEN 1 AND 5),
    soreness INTEGER CHECK (soreness BETWEEN 1 AND 5),
    stress INTEGER CHECK (stress BETWEEN 1 AND 5),
    rpe_tenths INTEGER CHECK (rpe_tenths BETWEEN 0 AND 100),
    minutes INTEGER CHECK (minutes BETWEEN 1 AND 480),
    note TEXT NOT NULL DEFAULT ''
) STRICT;

-- What a report was before an act changed it, so that the act can be taken back. JSON in the words of the open format.
CREATE TABLE report_change (
    act_id INTEGER NOT NULL REFERENCES act (id),
    session_id INTEGER NOT NULL REFERENCES session (id),
    before TEXT NOT NULL,
    after TEXT NOT NULL,
    PRIMARY KEY (act_id, session_id)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER report_change_is_never_changed BEFORE UPDATE ON report_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER report_change_is_never_deleted BEFORE DELETE ON report_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

-- Why a planned lift is left out of this session; nothing where it is done.
ALTER TABLE session_lift ADD COLUMN left_out TEXT;
