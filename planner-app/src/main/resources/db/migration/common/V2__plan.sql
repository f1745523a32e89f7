-- Plans that are kept, their visits, and what the manager holds. ${bytes} is the database's word for a long run of bytes.

create sequence plan_run_seq start with 1 increment by 50;
create table plan_run (
    id bigint not null,
    run_key varchar(200) not null,
    depot varchar(60),
    depot_key varchar(60) not null,
    made_for date not null,
    kept_at timestamp(6) with time zone not null,
    first_week varchar(8) not null,
    weeks integer not null,
    cost double precision not null,
    bound double precision,
    document ${bytes},
    primary key (id),
    constraint plan_run_one1 unique (run_key),
    constraint plan_run_of1 foreign key (depot) references depot (depot),
    constraint plan_run_fits1 check (weeks between 1 and 104),
    constraint plan_run_fits2 check (depot is null and depot_key = '*' or depot is not null and depot_key = depot)
);
create index plan_run_newest on plan_run (depot_key, id);

create sequence planned_visit_seq start with 1 increment by 1000;
create table planned_visit (
    id bigint not null,
    plan_run bigint not null,
    truck varchar(60) not null,
    depot varchar(60) not null,
    week varchar(8) not null,
    cylinders varchar(100) not null,
    tasks varchar(4000) not null,
    inspection boolean not null,
    labour_hours double precision not null,
    drained_litres double precision not null,
    bay integer,
    starts_at timestamp(6),
    ends_at timestamp(6),
    primary key (id),
    constraint planned_visit_one1 unique (plan_run, truck),
    constraint planned_visit_of1 foreign key (plan_run) references plan_run (id) on delete cascade,
    constraint planned_visit_of2 foreign key (truck) references truck (truck),
    constraint planned_visit_of3 foreign key (depot) references depot (depot),
    constraint planned_visit_fits1 check (labour_hours >= 0 and drained_litres >= 0),
    constraint planned_visit_fits2 check (bay is null or starts_at is not null and ends_at >= starts_at)
);
create index planned_visit_truck on planned_visit (truck, plan_run);

create sequence plan_hold_seq start with 1 increment by 50;
create table plan_hold (
    id bigint not null,
    truck varchar(60) not null,
    kind varchar(10) not null,
    week varchar(8),
    slot varchar(8) not null,
    made_at timestamp(6) with time zone not null,
    made_by varchar(60) not null,
    why varchar(2000) not null,
    primary key (id),
    constraint plan_hold_one1 unique (truck, slot),
    constraint plan_hold_of1 foreign key (truck) references truck (truck),
    constraint plan_hold_fits1 check (kind = 'PIN' and week is not null and slot = 'pin'
        or kind = 'REFUSE' and week is not null and slot = week
        or kind = 'REFUSE' and week is null and slot = 'never')
);

create table announced_visit (
    truck varchar(60) not null,
    week varchar(8) not null,
    announced_at timestamp(6) with time zone not null,
    announced_by varchar(60) not null,
    primary key (truck),
    constraint announced_visit_of1 foreign key (truck) references truck (truck)
);
