-- Several people at one studio: an act that is sent twice is done once.

-- A word of its own for every act, that whoever asks for it makes up. What was sent and not answered is sent again under the same token; the
-- studio refuses the second one. Acts from before have none.
ALTER TABLE act ADD COLUMN token TEXT;
CREATE UNIQUE INDEX act_is_done_once ON act (token) WHERE token IS NOT NULL;

-- Who signs in at the front desk is somebody too, whose name stands beside what they did; but takes no sessions, and has no column in a week.
ALTER TABLE coach ADD COLUMN is_coaching INTEGER NOT NULL DEFAULT 1 CHECK (is_coaching IN (0, 1));
