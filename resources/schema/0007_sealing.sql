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
