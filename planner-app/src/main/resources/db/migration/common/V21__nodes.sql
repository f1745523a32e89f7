-- Sessions and tries to sign in that the nodes of a shared database have in common; an embedded store has one node, and leaves them empty.
-- Names and columns of the sessions are those of the library that keeps them.
create table page_session (
    primary_id char(36) not null,
    session_id char(36) not null,
    creation_time bigint not null,
    last_access_time bigint not null,
    max_inactive_interval integer not null,
    expiry_time bigint not null,
    principal_name varchar(300),
    primary key (primary_id)
);
create unique index page_session_id on page_session (session_id);
create index page_session_expiry on page_session (expiry_time);
create index page_session_name on page_session (principal_name);

create table page_session_attributes (
    session_primary_id char(36) not null,
    attribute_name varchar(200) not null,
    attribute_bytes ${bytes} not null,
    primary key (session_primary_id, attribute_name),
    constraint page_session_attributes_of1 foreign key (session_primary_id) references page_session (primary_id) on delete cascade
);

create table sign_in_tries (
    id varchar(64) not null,
    state ${bytes},
    expires_at bigint,
    primary key (id)
);
create index sign_in_tries_expiry on sign_in_tries (expires_at);
