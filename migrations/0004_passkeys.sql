-- Why: a member sees the passkeys they have and takes away a lost one; an administrator sees which
-- invitations are open and withdraws them; whoever leaves takes their open invitations with them.

CREATE FUNCTION access.my_passkeys() RETURNS TABLE (id uuid, label text, synced boolean, added_at timestamptz, used_at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT p.id, p.label, coalesce((p.passkey #>> '{cred,backup_eligible}')::boolean, false), p.added_at, p.used_at
  FROM access.passkey p WHERE p.member_id = access.me() ORDER BY p.added_at $$;

-- Takes away one of one's own passkeys, never the last. True when it did. The member's row is locked
-- first, so that two requests cannot take the last two at once.
CREATE FUNCTION access.remove_passkey(which uuid) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  PERFORM FROM access.member WHERE id = access.me() FOR UPDATE;
  DELETE FROM access.passkey p WHERE p.id = which AND p.member_id = access.me()
    AND (SELECT count(*) FROM access.passkey o WHERE o.member_id = access.me()) > 1;
  RETURN FOUND;
END $$;

-- The invitations that still open something, for administrators.
CREATE FUNCTION access.invitations() RETURNS TABLE (hash bytea, name text, roles text[], made_at timestamptz, ends_at timestamptz)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = '' AS $$
  SELECT i.token_hash, i.name, i.roles, i.made_at, i.ends_at FROM access.invitation i
  WHERE access.has_role('administrator') AND i.member_id IS NULL AND i.spent_at IS NULL AND i.ends_at > access.now() ORDER BY i.made_at $$;

-- True when there was one to withdraw.
CREATE FUNCTION access.withdraw_invitation(which bytea) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  UPDATE access.invitation SET ends_at = access.now()
  WHERE access.has_role('administrator') AND token_hash = which AND member_id IS NULL AND spent_at IS NULL AND ends_at > access.now();
  RETURN FOUND;
END $$;

CREATE OR REPLACE FUNCTION access.end_membership(who uuid) RETURNS SETOF uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
BEGIN
  IF NOT access.has_role('administrator') OR who = access.me() THEN
    RAISE EXCEPTION 'not allowed to end this membership' USING ERRCODE = 'insufficient_privilege';
  END IF;
  UPDATE access.member SET left_at = access.now() WHERE id = who AND left_at IS NULL;
  UPDATE access.invitation SET ends_at = access.now()
  WHERE (made_by = who OR member_id = who) AND spent_at IS NULL AND ends_at > access.now();
  RETURN QUERY UPDATE access.signin SET closed_at = access.now() WHERE member_id = who AND closed_at IS NULL RETURNING id;
END $$;

-- As before, but the row of a sign-out names the member too: the sign-in that closed itself is not `me` any more.
CREATE OR REPLACE FUNCTION access.audit(act text, client uuid, object uuid) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = '' AS $$
DECLARE head access.audit_head; next_hash bytea; who uuid; what text := coalesce(access.kind(), 'nobody');
BEGIN
  SELECT s.member_id INTO who FROM access.signin s WHERE what = 'member' AND s.token_hash = access.token_hash();
  SELECT * INTO head FROM access.audit_head FOR UPDATE;
  next_hash := access.audit_hash(head.hash, head.seq + 1, access.now(), what, who, act, client, object);
  INSERT INTO public.audit VALUES (head.seq + 1, access.now(), what, who, act, client, object, head.hash, next_hash);
  UPDATE access.audit_head SET seq = head.seq + 1, hash = next_hash;
END $$;

REVOKE ALL ON FUNCTION access.my_passkeys(), access.remove_passkey(uuid), access.invitations(), access.withdraw_invitation(bytea) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION access.my_passkeys(), access.remove_passkey(uuid), access.invitations(), access.withdraw_invitation(bytea) TO leeward_app;
