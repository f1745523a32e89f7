-- The planning figures as each calibration chose them, with all that was tried. ${bytes} is the database's word for a long run of bytes.

create table calibration (
    run_key varchar(200) not null,
    kept_at timestamp(6) with time zone not null,
    access_share double precision not null,
    renewal_margin double precision not null,
    test_worth double precision not null,
    sign_weight double precision not null,
    document ${bytes} not null,
    primary key (run_key)
);
create index calibration_newest on calibration (kept_at);
