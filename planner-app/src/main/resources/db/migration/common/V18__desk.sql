-- Views of the worklist that people keep under a name; the view itself is the part of its address after the question mark.
create table saved_view (
    owner varchar(60) not null,
    name varchar(60) not null,
    address varchar(2000) not null,
    saved_at timestamp(6) with time zone not null,
    primary key (owner, name)
);

-- What was decided on the week's page: what it did, so that it can be undone for as long as nothing was built on it.
create table desk_decision (
    form_key varchar(100) not null,
    kind varchar(20) not null,
    depot varchar(60) not null,
    subject varchar(200) not null,
    state_seen varchar(2000) not null,
    words varchar(2000) not null,
    did varchar(4000) not null,
    done_at timestamp(6) with time zone not null,
    done_by varchar(100) not null,
    undone_at timestamp(6) with time zone,
    undone_by varchar(100),
    primary key (form_key),
    constraint desk_decision_fits1 check (kind in ('ORDER', 'TRANSFER', 'MOVE', 'RELEASE', 'SEVERAL', 'LEAVE')),
    constraint desk_decision_fits2 check ((undone_at is null) = (undone_by is null))
);
create index desk_decision_depot on desk_decision (depot, done_at);

-- Chances that the first plan of a depot's week gave its injectors, to be held against what happened: a line an injector with
-- truck, cylinder, day fitted and chance within 12 weeks, apart by tabs.
create table kept_forecast (
    depot varchar(60) not null,
    week varchar(8) not null,
    made_for date not null,
    chances ${bytes} not null,
    primary key (depot, week),
    constraint kept_forecast_of1 foreign key (depot) references depot (depot)
);
