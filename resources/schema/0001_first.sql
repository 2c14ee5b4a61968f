-- Days are counted from 1970-01-01, loads are hundredths of the lift's own unit, keys are those of the open file format.

CREATE TABLE studio (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    name TEXT NOT NULL
) STRICT;

CREATE TABLE coach (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (name <> '')
) STRICT;

CREATE TABLE studio_equipment (
    id INTEGER PRIMARY KEY,
    key TEXT NOT NULL UNIQUE,
    name TEXT NOT NULL,
    kind TEXT NOT NULL,
    unit TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
    equipment TEXT NOT NULL
) STRICT;

CREATE TABLE client (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (name <> ''),
    birth_day INTEGER,
    goal TEXT NOT NULL,
    coach_id INTEGER NOT NULL REFERENCES coach (id),
    unit TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
    body_mass_centi INTEGER CHECK (body_mass_centi > 0),
    started_day INTEGER NOT NULL,
    sessions_per_week INTEGER NOT NULL CHECK (sessions_per_week BETWEEN 1 AND 7),
    away_until_day INTEGER
) STRICT;

CREATE TABLE caution (
    id INTEGER PRIMARY KEY,
    client_id INTEGER NOT NULL REFERENCES client (id),
    body_part TEXT NOT NULL,
    text TEXT NOT NULL,
    short_text TEXT NOT NULL,
    tags TEXT NOT NULL,
    until_day INTEGER
) STRICT;
CREATE INDEX caution_by_client ON caution (client_id);

CREATE TABLE clearance (
    client_id INTEGER PRIMARY KEY REFERENCES client (id),
    state TEXT NOT NULL,
    reason TEXT NOT NULL,
    asked_day INTEGER,
    granted_day INTEGER,
    valid_until_day INTEGER,
    limits TEXT NOT NULL
) STRICT;

CREATE TABLE lift (
    id INTEGER PRIMARY KEY,
    client_id INTEGER NOT NULL REFERENCES client (id),
    pattern TEXT NOT NULL,
    equipment_key TEXT NOT NULL,
    unit TEXT NOT NULL CHECK (unit IN ('kg', 'lb')),
    region TEXT NOT NULL,
    body_mass_centi INTEGER CHECK (body_mass_centi > 0),
    kit TEXT NOT NULL,
    start_stage TEXT NOT NULL,
    policy TEXT NOT NULL,
    started_day INTEGER NOT NULL
) STRICT;
CREATE INDEX lift_by_client ON lift (client_id);

CREATE TABLE session (
    id INTEGER PRIMARY KEY,
    client_id INTEGER NOT NULL REFERENCES client (id),
    coach_id INTEGER NOT NULL REFERENCES coach (id),
    day INTEGER NOT NULL,
    start_minute INTEGER NOT NULL CHECK (start_minute BETWEEN 0 AND 1439),
    minutes INTEGER NOT NULL CHECK (minutes BETWEEN 5 AND 480),
    place TEXT NOT NULL,
    place_capacity INTEGER NOT NULL CHECK (place_capacity >= 1),
    kind TEXT NOT NULL,
    state TEXT NOT NULL,
    code TEXT NOT NULL UNIQUE
) STRICT;
CREATE INDEX session_by_client ON session (client_id, day, start_minute);
CREATE INDEX session_by_day ON session (day, start_minute);

-- One thing that a person did. Undo is an act too: it names the act that it takes back.
CREATE TABLE act (
    id INTEGER PRIMARY KEY,
    at_utc TEXT NOT NULL,
    coach_id INTEGER REFERENCES coach (id),
    kind TEXT NOT NULL,
    client_id INTEGER REFERENCES client (id),
    undoes_act_id INTEGER REFERENCES act (id)
) STRICT;
CREATE UNIQUE INDEX act_is_undone_once ON act (undoes_act_id) WHERE undoes_act_id IS NOT NULL;

-- The log: rows are only ever added. A correction is a row that replaces another; it keeps the root, the first version, whose
-- id gives the place in the day. A row is taken back by one that replaces it and is void.
CREATE TABLE event (
    id INTEGER PRIMARY KEY,
    root_id INTEGER REFERENCES event (id),
    replaces_id INTEGER REFERENCES event (id),
    lift_id INTEGER NOT NULL REFERENCES lift (id),
    day INTEGER NOT NULL,
    act_id INTEGER NOT NULL REFERENCES act (id),
    session_id INTEGER REFERENCES session (id),
    is_void INTEGER NOT NULL CHECK (is_void IN (0, 1)),
    type TEXT NOT NULL,
    pain INTEGER NOT NULL CHECK (pain BETWEEN 0 AND 10),
    detail TEXT,
    CHECK ((root_id IS NULL) = (replaces_id IS NULL))
) STRICT;
CREATE INDEX event_by_lift ON event (lift_id, day);
CREATE INDEX event_by_act ON event (act_id);
CREATE INDEX event_by_session ON event (session_id) WHERE session_id IS NOT NULL;
CREATE UNIQUE INDEX event_is_replaced_once ON event (replaces_id) WHERE replaces_id IS NOT NULL;

-- Sets of exposures. RIR and rest are -1 where they were not recorded; amounts are reps, seconds or metres.
CREATE TABLE event_set (
    event_id INTEGER NOT NULL REFERENCES event (id),
    position INTEGER NOT NULL,
    load_centi INTEGER NOT NULL CHECK (load_centi BETWEEN -500000 AND 500000),
    amount INTEGER NOT NULL CHECK (amount BETWEEN 0 AND 10000),
    rir INTEGER NOT NULL CHECK (rir BETWEEN -1 AND 10),
    rest_s INTEGER NOT NULL CHECK (rest_s BETWEEN -1 AND 3600),
    steadiness INTEGER NOT NULL CHECK (steadiness BETWEEN 0 AND 2),
    is_warmup INTEGER NOT NULL CHECK (is_warmup IN (0, 1)),
    PRIMARY KEY (event_id, position)
) STRICT, WITHOUT ROWID;

-- What a session was before an act changed it, so that the act can be taken back.
CREATE TABLE session_change (
    act_id INTEGER NOT NULL REFERENCES act (id),
    session_id INTEGER NOT NULL REFERENCES session (id),
    state_before TEXT NOT NULL,
    state_after TEXT NOT NULL,
    PRIMARY KEY (act_id, session_id)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER act_is_never_changed BEFORE UPDATE ON act
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER act_is_never_deleted BEFORE DELETE ON act
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER event_is_never_changed BEFORE UPDATE ON event
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER event_is_never_deleted BEFORE DELETE ON event
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER event_set_is_never_changed BEFORE UPDATE ON event_set
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER event_set_is_never_deleted BEFORE DELETE ON event_set
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER session_change_is_never_changed BEFORE UPDATE ON session_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER session_change_is_never_deleted BEFORE DELETE ON session_change
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

-- Caches: worked out from the log, thrown away and rebuilt at any time.
CREATE TABLE lift_state (
    lift_id INTEGER PRIMARY KEY REFERENCES lift (id),
    exercise_key TEXT NOT NULL,
    stage TEXT NOT NULL,
    stage_since_day INTEGER NOT NULL,
    cycle INTEGER NOT NULL,
    held_since_day INTEGER,
    hold_pain INTEGER NOT NULL,
    misses INTEGER NOT NULL,
    flags INTEGER NOT NULL,
    last_work_day INTEGER,
    first_work_day INTEGER,
    last_event_day INTEGER,
    rules TEXT NOT NULL,
    kit TEXT,
    state TEXT NOT NULL
) STRICT;

-- The first day of each stage in each cycle.
CREATE TABLE stage_reached (
    lift_id INTEGER NOT NULL REFERENCES lift (id),
    cycle INTEGER NOT NULL,
    stage INTEGER NOT NULL CHECK (stage BETWEEN 1 AND 7),
    day INTEGER NOT NULL,
    PRIMARY KEY (lift_id, cycle, stage)
) STRICT, WITHOUT ROWID;

-- Load volume of the working sets of an ISO week, named by its Monday: repetitions × tenths of a microgram, so that sums are exact.
CREATE TABLE client_week (
    monday INTEGER NOT NULL,
    client_id INTEGER NOT NULL REFERENCES client (id),
    load_volume INTEGER NOT NULL,
    PRIMARY KEY (monday, client_id)
) STRICT, WITHOUT ROWID;
