-- A rule says how soon a truck with a fuel leak must come in.
alter table due_rule drop constraint due_rule_fits5;
alter table due_rule add constraint due_rule_fits5 check (rule_kind in ('AGE_MONTHS', 'DISTANCE_KM', 'ENGINE_HOURS', 'FAULTS', 'BALANCE', 'RETURN_FLOW', 'RISK', 'WARRANTY', 'SAFETY'));
