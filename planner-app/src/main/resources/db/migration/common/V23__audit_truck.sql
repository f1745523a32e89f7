-- The truck that an entry of the audit trail is about, where it is about one.
alter table audit_entry add column truck varchar(60);

-- When somebody last previewed a change to a plan, on whichever node: milliseconds since 1970. Replanning by itself waits for it.
insert into job_mark (job, depot, kind, mark) values ('LIVE_PLAN', '', 'previewed', 0);
