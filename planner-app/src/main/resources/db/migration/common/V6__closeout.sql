-- What was really done: injectors on the shelf with serial and code, meant for a cylinder or not, and visits closed out.

-- One row that goods-in, kitting and close-out take turns at, so that two of them never trust what the other is changing.
create table workshop_gate (
    id integer not null,
    turn bigint not null,
    primary key (id)
);
insert into workshop_gate (id, turn) values (1, 0);

create index injector_serial on injector (serial);
create index injector_code on injector (calibration_code);

create sequence close_out_seq start with 1 increment by 1000;
create table close_out (
    id bigint not null,
    form_key varchar(100) not null,
    truck varchar(60) not null,
    depot varchar(60) not null,
    week varchar(8),
    done_on date not null,
    version integer not null,
    corrects bigint,
    why varchar(2000) not null,
    labour_hours double precision not null,
    odometer_km double precision,
    engine_hours double precision,
    meter_replaced boolean not null,
    extras varchar(2000) not null,
    tasks varchar(4000) not null,
    recheck_on date,
    read_at timestamp(6) with time zone,
    remarks varchar(4000) not null,
    closed_at timestamp(6) with time zone not null,
    made_at timestamp(6) with time zone not null,
    made_by varchar(60) not null,
    primary key (id),
    constraint close_out_one1 unique (form_key),
    constraint close_out_one2 unique (corrects),
    constraint close_out_of1 foreign key (truck) references truck (truck),
    constraint close_out_of2 foreign key (depot) references depot (depot),
    constraint close_out_of3 foreign key (corrects) references close_out (id),
    constraint close_out_fits1 check (labour_hours >= 0),
    constraint close_out_fits2 check (version >= 1 and (version = 1) = (corrects is null))
);
create index close_out_truck on close_out (truck, made_at);

create table close_out_cylinder (
    close_out bigint not null,
    cylinder integer not null,
    fitted boolean not null,
    found varchar(20),
    old_serial varchar(60),
    old_fitted_on date,
    part varchar(60),
    serial varchar(60),
    calibration_code varchar(60),
    origin varchar(20),
    programmed boolean not null,
    read_back varchar(10) not null,
    reason varchar(2000) not null,
    primary key (close_out, cylinder),
    constraint close_out_cylinder_of1 foreign key (close_out) references close_out (id),
    constraint close_out_cylinder_of2 foreign key (part) references part (part),
    constraint close_out_cylinder_fits1 check (cylinder between 1 and 16),
    constraint close_out_cylinder_fits2 check (fitted = (serial is not null)),
    constraint close_out_cylinder_fits3 check (read_back in ('TYPED', 'COMPARED', 'NONE'))
);

create table close_out_part (
    close_out bigint not null,
    part varchar(60) not null,
    used double precision not null,
    taken double precision not null,
    primary key (close_out, part),
    constraint close_out_part_of1 foreign key (close_out) references close_out (id),
    constraint close_out_part_of2 foreign key (part) references part (part),
    constraint close_out_part_fits1 check (used > 0 and taken >= 0)
);

create table close_out_test (
    close_out bigint not null,
    cylinder integer not null,
    test varchar(20) not null,
    result double precision not null,
    unit varchar(60) not null,
    engine_state varchar(2000) not null,
    primary key (close_out, cylinder, test),
    constraint close_out_test_of1 foreign key (close_out) references close_out (id)
);

-- there is 1 while it lies on the shelf and empty afterwards: on the shelf every serial, code and place stands once.
create sequence shelf_injector_seq start with 1 increment by 1000;
create table shelf_injector (
    id bigint not null,
    depot varchar(60) not null,
    part varchar(60) not null,
    serial varchar(60) not null,
    calibration_code varchar(60),
    origin varchar(20) not null,
    received_at timestamp(6) with time zone not null,
    received_by varchar(60) not null,
    truck varchar(60),
    cylinder integer,
    bound_at timestamp(6) with time zone,
    bound_by varchar(60),
    there integer,
    gone_at timestamp(6) with time zone,
    gone_by varchar(60),
    close_out bigint,
    primary key (id),
    constraint shelf_injector_one1 unique (there, serial),
    constraint shelf_injector_one2 unique (there, calibration_code),
    constraint shelf_injector_one3 unique (there, truck, cylinder),
    constraint shelf_injector_of1 foreign key (depot) references depot (depot),
    constraint shelf_injector_of2 foreign key (part) references part (part),
    constraint shelf_injector_of3 foreign key (truck) references truck (truck),
    constraint shelf_injector_of4 foreign key (close_out) references close_out (id),
    constraint shelf_injector_fits1 check (origin in ('NEW', 'REMAN')),
    constraint shelf_injector_fits2 check ((truck is null) = (cylinder is null)),
    constraint shelf_injector_fits3 check (there is null and gone_at is not null or there = 1 and gone_at is null)
);
create index shelf_injector_depot on shelf_injector (depot, there);
