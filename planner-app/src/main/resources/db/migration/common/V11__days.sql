-- Shifts, recorded repairs, visits fixed to a day, diagnoses that are held off, and diagnosis visits beside others.

create sequence depot_shift_seq start with 1 increment by 1000;
create table depot_shift (
    id bigint not null,
    depot varchar(60) not null,
    weekday varchar(9) not null,
    starts_at varchar(5) not null,
    ends_at varchar(5) not null,
    break_starts_at varchar(5),
    break_ends_at varchar(5),
    primary key (id),
    constraint depot_shift_one1 unique (depot, weekday, starts_at),
    constraint depot_shift_of1 foreign key (depot) references depot (depot)
);

create sequence repair_seq start with 1 increment by 1000;
create table repair (
    id bigint not null,
    truck varchar(60) not null,
    done_on date not null,
    odometer_km double precision,
    what varchar(2000) not null,
    hours double precision,
    remark varchar(2000) not null,
    done_by varchar(60) not null,
    primary key (id),
    constraint repair_of1 foreign key (truck) references truck (truck)
);
create index repair_truck on repair (truck, done_on);

alter table plan_hold add column pin_day date;
alter table plan_hold add column pin_bay integer;
alter table plan_hold add column pin_start varchar(5);

create table safety_hold (
    truck varchar(60) not null,
    reason varchar(2000) not null,
    held_by varchar(60) not null,
    since date not null,
    codes varchar(2000) not null,
    primary key (truck),
    constraint safety_hold_of1 foreign key (truck) references truck (truck)
);

alter table planned_visit add column diagnosis boolean default false not null;
alter table planned_visit drop constraint planned_visit_one1;
alter table planned_visit add constraint planned_visit_one2 unique (plan_run, truck, week, diagnosis);
