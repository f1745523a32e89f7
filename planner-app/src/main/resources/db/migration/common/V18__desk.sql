-- Views of the worklist that people keep under a name; the view itself is the part of its address after the question mark.
create table saved_view (
    owner varchar(60) not null,
    name varchar(60) not null,
    address varchar(2000) not null,
    saved_at timestamp(6) with time zone not null,
    primary key (owner, name)
);
