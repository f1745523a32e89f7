-- What loading files keeps: how each kind of file is read; a truck may be known before its VIN is.
create table file_match (
    source_key varchar(64) not null,
    source varchar(255) not null,
    of_table varchar(60) not null,
    match_text varchar(100000) not null,
    saved_at timestamp(6) with time zone not null,
    saved_by varchar(100) not null,
    primary key (source_key)
);

alter table truck add column vin_if_known varchar(17);
update truck set vin_if_known = vin;
alter table truck drop constraint truck_one1;
alter table truck drop column vin;
alter table truck add constraint truck_one_vin unique (vin_if_known);
