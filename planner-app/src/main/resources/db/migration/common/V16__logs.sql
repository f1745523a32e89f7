-- Faults from vehicle logs: an episode has a last report as well. Whose a log, or an ECU in it, is.

alter table fault add column last_seen_at timestamp(6) with time zone;
alter table fault add constraint fault_fits6 check (last_seen_at is null or last_seen_at >= seen_at);

create sequence log_source_seq start with 1 increment by 1000;
create table log_source (
    id bigint not null,
    log varchar(120) not null,
    source_address integer,
    truck varchar(60),
    spn_layout integer,
    source_key integer not null,
    primary key (id),
    constraint log_source_one1 unique (log, source_key),
    constraint log_source_of2 foreign key (truck) references truck (truck),
    constraint log_source_fits3 check (source_address is null or source_address between 0 and 253),
    constraint log_source_fits4 check (source_key = coalesce(source_address, -1)),
    constraint log_source_fits5 check (spn_layout is null or spn_layout between 1 and 4),
    constraint log_source_fits6 check (truck is not null or spn_layout is not null)
);
