-- Direction: the plans that follow the beginner months, and the tests of maxima.

-- A plan of a client. Rows are only ever added: a change replaces a version by another, an undo puts the content of the version before in its
-- place again, or a void one where there was none. The root is the first version, whose id is that of the plan.
CREATE TABLE plan (
    id INTEGER PRIMARY KEY,
    root_id INTEGER REFERENCES plan (id),
    replaces_id INTEGER REFERENCES plan (id),
    act_id INTEGER NOT NULL REFERENCES act (id),
    is_void INTEGER NOT NULL CHECK (is_void IN (0, 1)),
    client_id INTEGER NOT NULL REFERENCES client (id),
    begun_day INTEGER NOT NULL,
    last_day INTEGER NOT NULL,
    ended_day INTEGER CHECK (ended_day IS NULL OR ended_day >= begun_day),
    note TEXT NOT NULL,
    content TEXT NOT NULL,
    CHECK ((root_id IS NULL) = (replaces_id IS NULL))
) STRICT;
CREATE INDEX plan_by_client ON plan (client_id, begun_day);
CREATE INDEX plan_by_act ON plan (act_id);
CREATE UNIQUE INDEX plan_is_replaced_once ON plan (replaces_id) WHERE replaces_id IS NOT NULL;

CREATE TRIGGER plan_is_never_changed BEFORE UPDATE ON plan
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER plan_is_never_deleted BEFORE DELETE ON plan
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

-- What a test of a maximum found. Rows are only ever added, as decisions are.
CREATE TABLE tested_maximum (
    id INTEGER PRIMARY KEY,
    root_id INTEGER REFERENCES tested_maximum (id),
    replaces_id INTEGER REFERENCES tested_maximum (id),
    act_id INTEGER NOT NULL REFERENCES act (id),
    is_void INTEGER NOT NULL CHECK (is_void IN (0, 1)),
    client_id INTEGER NOT NULL REFERENCES client (id),
    lift_id INTEGER NOT NULL REFERENCES lift (id),
    day INTEGER NOT NULL,
    load_centi INTEGER NOT NULL,
    reps INTEGER NOT NULL CHECK (reps BETWEEN 1 AND 5),
    ending TEXT NOT NULL,
    note TEXT NOT NULL,
    CHECK ((root_id IS NULL) = (replaces_id IS NULL))
) STRICT;
CREATE INDEX tested_maximum_by_client ON tested_maximum (client_id, day);
CREATE INDEX tested_maximum_by_act ON tested_maximum (act_id);
CREATE UNIQUE INDEX tested_maximum_is_replaced_once ON tested_maximum (replaces_id) WHERE replaces_id IS NOT NULL;

CREATE TRIGGER tested_maximum_is_never_changed BEFORE UPDATE ON tested_maximum
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
CREATE TRIGGER tested_maximum_is_never_deleted BEFORE DELETE ON tested_maximum
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;
