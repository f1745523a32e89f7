-- What the mechanic's desk keeps: jobs begun at the truck, what a diagnosis looked at, photographs of what was found.

create sequence bay_job_seq start with 1 increment by 1000;
create table bay_job (
    id bigint not null,
    form_key varchar(100) not null,
    truck varchar(60) not null,
    depot varchar(60) not null,
    failed varchar(60) not null,
    cylinders varchar(60) not null,
    started_at timestamp(6) with time zone not null,
    started_by varchar(60) not null,
    why varchar(500) not null,
    ended_at timestamp(6) with time zone,
    ended_by varchar(60),
    close_out bigint,
    primary key (id),
    constraint bay_job_one1 unique (form_key),
    constraint bay_job_of1 foreign key (truck) references truck (truck),
    constraint bay_job_of2 foreign key (close_out) references close_out (id),
    constraint bay_job_fits1 check ((ended_at is null) = (ended_by is null)),
    constraint bay_job_fits2 check (close_out is null or ended_at is not null)
);
create index bay_job_truck on bay_job (truck, started_at);

create sequence bay_look_seq start with 1 increment by 1000;
create table bay_look (
    id bigint not null,
    truck varchar(60) not null,
    kind varchar(20) not null,
    step varchar(60) not null,
    state varchar(20) not null,
    found varchar(500) not null,
    seen_at timestamp(6) with time zone not null,
    seen_by varchar(60) not null,
    ended_at timestamp(6) with time zone,
    primary key (id),
    constraint bay_look_of1 foreign key (truck) references truck (truck)
);
create index bay_look_truck on bay_look (truck, seen_at);

create sequence bay_photo_seq start with 1 increment by 1000;
create table bay_photo (
    id bigint not null,
    form_key varchar(100) not null,
    truck varchar(60) not null,
    visit varchar(40) not null,
    cylinder integer,
    note varchar(200) not null,
    width integer not null,
    height integer not null,
    taken_at timestamp(6) with time zone not null,
    taken_by varchar(60) not null,
    jpeg_base64 varchar(3000000) not null,
    primary key (id),
    constraint bay_photo_one1 unique (form_key),
    constraint bay_photo_of1 foreign key (truck) references truck (truck),
    constraint bay_photo_fits1 check (width > 0 and height > 0)
);
create index bay_photo_truck on bay_photo (truck, visit);
