-- Records that stay true: several fittings a day in one cylinder, injectors of unknown history, the day the records began,
-- close-outs entered late and voided, scheduled services with their last day and parts, answers about failures.

-- The order within a day is part of an injector's key; at most one injector a cylinder is still fitted (in_key empty).
alter table injector add column fitting integer default 1 not null;
alter table injector add column in_key varchar(20) default '' not null;
update injector set in_key = cast(fitted_on as varchar(10)) || '/1' where removed_on is not null;
alter table injector drop constraint injector_one1;
alter table injector drop constraint injector_one2;
alter table injector drop constraint injector_fits6;
alter table injector add constraint injector_one11 unique (truck, cylinder, fitted_on, fitting);
alter table injector add constraint injector_one12 unique (truck, cylinder, removed_key, in_key);
alter table injector add constraint injector_fits13 check (origin in ('NEW', 'REMAN', 'UNKNOWN'));
alter table injector add constraint injector_fits14 check (fitting between 1 and 20);
alter table injector add constraint injector_fits15 check ((removed_on is null) = (in_key = ''));

-- Failures are on record from that day on; empty: since the first meter reading.
alter table depot add column records_since date;
alter table truck add column records_since date;

-- Whether failures of a part were recorded, asked where it has long service and none.
create sequence failure_answer_seq start with 1 increment by 1000;
create table failure_answer (
    id bigint not null,
    part varchar(60) not null,
    answer varchar(20) not null,
    answered_on date not null,
    answered_by varchar(60) not null,
    primary key (id),
    constraint failure_answer_one1 unique (part),
    constraint failure_answer_of2 foreign key (part) references part (part),
    constraint failure_answer_fits3 check (answer in ('NONE_FAILED', 'NOT_RECORDED'))
);

-- When a scheduled service was last done, by file or by close-out.
create sequence task_done_seq start with 1 increment by 1000;
create table task_done (
    id bigint not null,
    truck varchar(60) not null,
    task varchar(60) not null,
    done_on date not null,
    odometer_km double precision,
    engine_hours double precision,
    primary key (id),
    constraint task_done_one1 unique (truck, task, done_on),
    constraint task_done_of2 foreign key (truck) references truck (truck),
    constraint task_done_fits3 check (odometer_km is null or odometer_km >= 0),
    constraint task_done_fits4 check (engine_hours is null or engine_hours >= 0)
);

-- Parts of a scheduled service.
alter table job_part add column task varchar(60);
alter table job_part drop constraint job_part_fits5;
alter table job_part drop constraint job_part_fits7;
alter table job_part add constraint job_part_of9 foreign key (family, task) references interval_task (family, task);
alter table job_part add constraint job_part_fits10 check (counted_per in ('CYLINDER', 'BANK', 'VISIT', 'STEP', 'TASK'));
alter table job_part add constraint job_part_fits11 check (step_key = coalesce(step, coalesce(task, '')));
alter table job_part add constraint job_part_fits12 check ((counted_per = 'TASK') = (task is not null));

-- When the work was finished; a voided close-out stays readable and means nothing any more.
alter table close_out add column finished_at timestamp(6) with time zone;
alter table close_out add column voided_at timestamp(6) with time zone;
alter table close_out add column voided_by varchar(60);
alter table close_out add column void_reason varchar(2000) default '' not null;
alter table close_out_cylinder add column fitting integer default 1 not null;
alter table close_out_cylinder add column old_fitting integer default 1 not null;
alter table close_out_cylinder add column failed_first_serial varchar(60);
alter table close_out_cylinder add column failed_first_code varchar(60);

-- What a close-out ended, to be given back when it is corrected or voided: a pin, a confirmation, kit places, alerts.
create table close_out_ended (
    close_out bigint not null,
    nr integer not null,
    kind varchar(10) not null,
    week varchar(8),
    on_day date,
    bay integer,
    at_time varchar(5),
    stock_injector bigint,
    cylinder integer,
    made_at timestamp(6) with time zone,
    made_by varchar(60),
    why varchar(2000) default '' not null,
    primary key (close_out, nr),
    constraint close_out_ended_of1 foreign key (close_out) references close_out (id),
    constraint close_out_ended_fits1 check (kind in ('PIN', 'CONFIRMED', 'KIT', 'ALERT', 'TASK'))
);
