-- Why: two lists read more with every year that a practice has. What is due next is folded in the transaction of whatever changes it, and asks for the
-- forms that were declined: without an index that read every asking of the practice. And the lead's first page read every session there ever was for those
-- that nobody closed (105 of its 280 ms over a million of them).

CREATE INDEX ON asking (episode_id) WHERE closed_as = 'declined';
CREATE INDEX ON session (opened_at) WHERE ended_at IS NULL;
