-- What the site has set for itself; what has no row here is as the planner has it by default.
create table site_setting (
    name varchar(60) not null,
    setting varchar(200) not null,
    version bigint not null,
    changed_at timestamp(6) with time zone not null,
    changed_by varchar(100) not null,
    primary key (name)
);

-- One row that those who change settings take turns at; it names the newest plan there was
-- when something was last changed that plans are made of: that plan and those before it do not know of it.
create table settings_gate (
    id integer not null,
    turn bigint not null,
    newest_plan bigint,
    primary key (id)
);
insert into settings_gate (id, turn) values (1, 0);
