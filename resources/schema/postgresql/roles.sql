-- What the roles of a studio's server may. Coaches may everything in every table, and only add to those that are append-only; what is
-- here takes from that. The front desk may nothing but what is here: a table or a column that is new is closed to it. Owners own the tables.

GRANT USAGE ON SCHEMA chalkrung TO {coach}, {front_desk};

-- Logins, coaches, equipment and the studio's own figures are the owner's. Hours are everybody's own matter.
REVOKE INSERT, UPDATE, DELETE ON server, login, studio, coach, studio_equipment FROM {coach};
GRANT UPDATE (work) ON coach TO {coach};
-- Erasure is the owner's. Of who was added by mistake and has done nothing yet, a guard lets the lines of the audit go.
REVOKE INSERT, UPDATE, DELETE ON erased_client, erased_session FROM {coach};
GRANT DELETE ON audit TO {coach};

GRANT SELECT ON server, login, studio, coach, closure, week_quota TO {front_desk};
-- No goal, no birth day, no body mass.
GRANT SELECT (id, name, coach_id, unit, started_day, sessions_per_week, away_until_day, planning, is_withdrawn) ON client TO {front_desk};
GRANT SELECT, INSERT ON session TO {front_desk};
GRANT UPDATE (coach_id, day, start_minute, minutes, place, place_capacity, kind, state, is_locked) ON session TO {front_desk};
-- A booking is an act, and what it was before is kept.
GRANT SELECT, INSERT ON act, session_change, booking_change TO {front_desk};
GRANT INSERT ON audit TO {front_desk};

-- Who only tries a new client out takes them away again with their audit; the trigger lets nothing else of it go. Erasing is the owner's.
GRANT DELETE ON audit TO {coach};
REVOKE INSERT, UPDATE, DELETE ON erased_client, erased_session FROM {coach};
GRANT INSERT ON audit TO {front_desk};
