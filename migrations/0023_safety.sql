-- A call is agreed as well for the client's safety, whatever the closing says. The code says no more than that: a lead may read it.
ALTER TABLE after_check DROP CONSTRAINT after_check_reason_check,
  ADD CONSTRAINT after_check_reason_check CHECK (reason IN ('first_reprocessing', 'incomplete', 'safety', 'too_much', 'unsteady'));
