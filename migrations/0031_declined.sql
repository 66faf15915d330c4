-- Why: what is due next is folded in the transaction of whatever changes it, and asks for the forms that were declined; without an index that read every
-- asking of the practice, so that each form kept grew slower with all the others.

CREATE INDEX ON asking (episode_id) WHERE closed_as = 'declined';
