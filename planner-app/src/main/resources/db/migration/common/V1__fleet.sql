-- The fleet: one table for each kind of row that is loaded. Names of constraints tell what they guard:
-- one (unique), of (belongs to), fits (range).

create table depot (
    depot varchar(60) not null,
    name varchar(60) not null,
    time_zone varchar(60) not null,
    bays integer not null,
    labour_hours_per_day double precision not null,
    work_days varchar(100) not null,
    labour_per_hour numeric(17, 4) not null,
    overtime_per_hour numeric(17, 4) not null,
    overtime_hours_per_week double precision not null,
    primary key (depot),
    constraint depot_fits1 check (bays between 1 and 200),
    constraint depot_fits2 check (labour_hours_per_day >= 0),
    constraint depot_fits3 check (overtime_per_hour >= labour_per_hour),
    constraint depot_fits4 check (overtime_hours_per_week >= 0)
);

create table part (
    part varchar(60) not null,
    description varchar(2000) not null,
    kind varchar(20) not null,
    supplier varchar(60) not null,
    price numeric(17, 4) not null,
    core_deposit numeric(17, 4) not null,
    core_days integer not null,
    lead_days integer not null,
    lead_days_max integer not null,
    pack integer not null,
    minimum_order integer not null,
    warranty_months integer not null,
    warranty_km double precision not null,
    code_pattern varchar(2000),
    primary key (part),
    constraint part_fits1 check (kind in ('INJECTOR', 'SEAL', 'LINE', 'FITTING', 'FILTER', 'COOLANT', 'CLEANER', 'OTHER')),
    constraint part_fits2 check (price >= 0 and core_deposit >= 0),
    constraint part_fits3 check (lead_days >= 0 and lead_days_max >= lead_days),
    constraint part_fits4 check (pack >= 1 and minimum_order >= 0 and core_days >= 0),
    constraint part_fits5 check (warranty_months >= 0 and warranty_km >= 0)
);

create table engine_family (
    family varchar(60) not null,
    cylinders integer not null,
    banks varchar(400) not null,
    firing_order varchar(100) not null,
    cylinder_hours double precision not null,
    coolant_litres double precision not null,
    glycol_percent double precision not null,
    injector_part varchar(60) not null,
    road_failure_cost numeric(17, 4) not null,
    primary key (family),
    constraint engine_family_of1 foreign key (injector_part) references part (part),
    constraint engine_family_fits2 check (cylinders between 1 and 16),
    constraint engine_family_fits3 check (cylinder_hours >= 0 and coolant_litres >= 0),
    constraint engine_family_fits4 check (glycol_percent between 0 and 100),
    constraint engine_family_fits5 check (road_failure_cost >= 0)
);

create sequence access_step_seq start with 1 increment by 1000;
create table access_step (
    id bigint not null,
    family varchar(60) not null,
    step varchar(60) not null,
    step_order integer not null,
    hours double precision not null,
    cylinders varchar(100) not null,
    drains_coolant_percent double precision not null,
    cautions varchar(2000) not null,
    primary key (id),
    constraint access_step_one1 unique (family, step),
    constraint access_step_of3 foreign key (family) references engine_family (family),
    constraint access_step_fits4 check (step_order between 1 and 999),
    constraint access_step_fits5 check (hours >= 0),
    constraint access_step_fits6 check (drains_coolant_percent between 0 and 100)
);

create table duty_group (
    duty_group varchar(60) not null,
    minimum_on_road integer not null,
    downtime_per_day numeric(17, 4) not null,
    primary key (duty_group),
    constraint duty_group_fits1 check (minimum_on_road >= 0 and downtime_per_day >= 0)
);

create table truck (
    truck varchar(60) not null,
    vin varchar(17) not null,
    depot varchar(60) not null,
    family varchar(60) not null,
    duty_group varchar(60),
    in_service_on date not null,
    out_of_service_on date,
    warranty_until date,
    primary key (truck),
    constraint truck_one1 unique (vin),
    constraint truck_of2 foreign key (depot) references depot (depot),
    constraint truck_of3 foreign key (family) references engine_family (family),
    constraint truck_of4 foreign key (duty_group) references duty_group (duty_group),
    constraint truck_fits5 check (out_of_service_on is null or out_of_service_on >= in_service_on)
);

create sequence capacity_seq start with 1 increment by 1000;
create table capacity (
    id bigint not null,
    depot varchar(60) not null,
    on_day date not null,
    labour_hours double precision not null,
    bays integer not null,
    primary key (id),
    constraint capacity_one1 unique (depot, on_day),
    constraint capacity_of2 foreign key (depot) references depot (depot),
    constraint capacity_fits3 check (labour_hours >= 0 and bays >= 0)
);

create sequence injector_seq start with 1 increment by 1000;
create table injector (
    id bigint not null,
    truck varchar(60) not null,
    cylinder integer not null,
    part varchar(60) not null,
    serial varchar(60),
    calibration_code varchar(60),
    origin varchar(20) not null,
    fitted_on date not null,
    odometer_km double precision,
    engine_hours double precision,
    removed_on date,
    removed_odometer_km double precision,
    removed_engine_hours double precision,
    found varchar(20),
    removed_key date not null,
    primary key (id),
    constraint injector_one1 unique (truck, cylinder, fitted_on),
    constraint injector_one2 unique (truck, cylinder, removed_key),
    constraint injector_of3 foreign key (truck) references truck (truck),
    constraint injector_of4 foreign key (part) references part (part),
    constraint injector_fits5 check (cylinder between 1 and 16),
    constraint injector_fits6 check (origin in ('NEW', 'REMAN')),
    constraint injector_fits7 check (found is null or found in ('FAILED', 'WORN', 'HEALTHY', 'UNKNOWN')),
    constraint injector_fits8 check (removed_on is null or removed_on >= fitted_on),
    constraint injector_fits9 check (removed_key = coalesce(removed_on, date '9999-12-31')),
    constraint injector_fits10 check (removed_on is not null or (removed_odometer_km is null and removed_engine_hours is null and found is null))
);

create sequence reading_seq start with 1 increment by 1000;
create table reading (
    id bigint not null,
    truck varchar(60) not null,
    taken_at timestamp(6) with time zone not null,
    odometer_km double precision,
    engine_hours double precision,
    meter_replaced boolean not null,
    primary key (id),
    constraint reading_one1 unique (truck, taken_at),
    constraint reading_of2 foreign key (truck) references truck (truck),
    constraint reading_fits3 check (odometer_km is not null or engine_hours is not null),
    constraint reading_fits4 check (odometer_km is null or odometer_km >= 0),
    constraint reading_fits5 check (engine_hours is null or engine_hours >= 0)
);

create sequence fault_seq start with 1 increment by 1000;
create table fault (
    id bigint not null,
    truck varchar(60) not null,
    seen_at timestamp(6) with time zone not null,
    code varchar(40) not null,
    cylinder integer,
    occurrences integer not null,
    odometer_km double precision,
    cylinder_key integer not null,
    primary key (id),
    constraint fault_one1 unique (truck, seen_at, code, cylinder_key),
    constraint fault_of2 foreign key (truck) references truck (truck),
    constraint fault_fits3 check (cylinder is null or cylinder between 1 and 16),
    constraint fault_fits4 check (cylinder_key = coalesce(cylinder, 0)),
    constraint fault_fits5 check (occurrences >= 1)
);

create sequence cylinder_test_seq start with 1 increment by 1000;
create table cylinder_test (
    id bigint not null,
    truck varchar(60) not null,
    cylinder integer not null,
    tested_at timestamp(6) with time zone not null,
    test varchar(20) not null,
    result double precision not null,
    unit varchar(60) not null,
    engine_state varchar(2000) not null,
    primary key (id),
    constraint cylinder_test_one1 unique (truck, cylinder, tested_at, test),
    constraint cylinder_test_of2 foreign key (truck) references truck (truck),
    constraint cylinder_test_fits3 check (cylinder between 1 and 16),
    constraint cylinder_test_fits4 check (test in ('BALANCE', 'RETURN_FLOW', 'CONTRIBUTION'))
);

create sequence job_part_seq start with 1 increment by 1000;
create table job_part (
    id bigint not null,
    family varchar(60) not null,
    counted_per varchar(20) not null,
    step varchar(60),
    part varchar(60) not null,
    quantity double precision not null,
    chance double precision not null,
    step_key varchar(60) not null,
    primary key (id),
    constraint job_part_one1 unique (family, counted_per, step_key, part),
    constraint job_part_of2 foreign key (family) references engine_family (family),
    constraint job_part_of3 foreign key (family, step) references access_step (family, step),
    constraint job_part_of4 foreign key (part) references part (part),
    constraint job_part_fits5 check (counted_per in ('CYLINDER', 'BANK', 'VISIT', 'STEP')),
    constraint job_part_fits6 check ((counted_per = 'STEP') = (step is not null)),
    constraint job_part_fits7 check (step_key = coalesce(step, '')),
    constraint job_part_fits8 check (quantity > 0 and chance between 0 and 1)
);

create sequence stock_seq start with 1 increment by 1000;
create table stock (
    id bigint not null,
    depot varchar(60) not null,
    part varchar(60) not null,
    on_hand double precision not null,
    primary key (id),
    constraint stock_one1 unique (depot, part),
    constraint stock_of2 foreign key (depot) references depot (depot),
    constraint stock_of3 foreign key (part) references part (part),
    constraint stock_fits4 check (on_hand >= 0)
);

create sequence purchase_line_seq start with 1 increment by 1000;
create table purchase_line (
    id bigint not null,
    purchase_order varchar(60) not null,
    part varchar(60) not null,
    depot varchar(60) not null,
    quantity double precision not null,
    due_on date not null,
    received_on date,
    primary key (id),
    constraint purchase_line_one1 unique (purchase_order, part, depot),
    constraint purchase_line_of2 foreign key (part) references part (part),
    constraint purchase_line_of3 foreign key (depot) references depot (depot),
    constraint purchase_line_fits4 check (quantity > 0)
);

create sequence away_seq start with 1 increment by 1000;
create table away (
    id bigint not null,
    truck varchar(60) not null,
    from_day date not null,
    to_day date not null,
    reason varchar(2000) not null,
    primary key (id),
    constraint away_one1 unique (truck, from_day),
    constraint away_of2 foreign key (truck) references truck (truck),
    constraint away_fits3 check (to_day >= from_day)
);

create sequence interval_task_seq start with 1 increment by 1000;
create table interval_task (
    id bigint not null,
    family varchar(60) not null,
    task varchar(60) not null,
    every_km double precision,
    every_hours double precision,
    every_months integer,
    hours double precision not null,
    rides boolean not null,
    primary key (id),
    constraint interval_task_one1 unique (family, task),
    constraint interval_task_of2 foreign key (family) references engine_family (family),
    constraint interval_task_fits3 check (every_km is not null or every_hours is not null or every_months is not null),
    constraint interval_task_fits4 check (hours >= 0)
);

create sequence due_rule_seq start with 1 increment by 1000;
create table due_rule (
    id bigint not null,
    family varchar(60),
    rule_kind varchar(20) not null,
    limit_value double precision not null,
    window_days integer,
    family_key varchar(60) not null,
    primary key (id),
    constraint due_rule_one1 unique (family_key, rule_kind),
    constraint due_rule_of2 foreign key (family) references engine_family (family),
    constraint due_rule_fits3 check (family_key = coalesce(family, '')),
    constraint due_rule_fits4 check (limit_value > 0),
    constraint due_rule_fits5 check (rule_kind in ('AGE_MONTHS', 'DISTANCE_KM', 'ENGINE_HOURS', 'FAULTS', 'BALANCE', 'RETURN_FLOW', 'RISK', 'WARRANTY'))
);
