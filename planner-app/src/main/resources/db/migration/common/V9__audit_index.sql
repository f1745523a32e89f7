-- The newest note of one kind is found without reading the whole trail.
create index audit_entry_what on audit_entry (what, id);
