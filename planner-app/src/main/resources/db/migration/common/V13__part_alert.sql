-- Alerts about a part whose injectors fail sooner: they name a depot and no truck.

alter table alert drop constraint alert_fits9;
alter table alert add constraint alert_fits9 check (rule = 'JOB' or (rule = 'FAILS_SOONER' and depot is not null)
    or (truck is not null and depot is not null and action is not null));
