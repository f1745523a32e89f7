-- People who sign in. A person is never removed, only disabled: the audit trail speaks of them by name.
create sequence person_seq start with 1 increment by 1000;
create table person (
    id bigint not null,
    name varchar(60) not null,
    name_key varchar(60) not null,
    depot varchar(60),
    password_hash varchar(300) not null,
    stamp bigint not null,
    must_change boolean not null,
    disabled boolean not null,
    failed_attempts integer not null,
    made_at timestamp(6) with time zone not null,
    signed_in_at timestamp(6) with time zone,
    primary key (id),
    constraint person_one1 unique (name_key),
    constraint person_of1 foreign key (depot) references depot (depot),
    constraint person_fits1 check (failed_attempts >= 0)
);

create table person_role (
    person bigint not null,
    role varchar(20) not null,
    primary key (person, role),
    constraint person_role_of1 foreign key (person) references person (id),
    constraint person_role_fits1 check (role in ('MANAGER', 'BUYER', 'MECHANIC', 'ADMINISTRATOR'))
);

-- Tokens of other programs; the store has only their hashes.
create sequence api_token_seq start with 1 increment by 1000;
create table api_token (
    id bigint not null,
    name varchar(60) not null,
    token_hash varchar(64) not null,
    depot varchar(60),
    made_by varchar(60) not null,
    made_at timestamp(6) with time zone not null,
    expires_at timestamp(6) with time zone not null,
    used_at timestamp(6) with time zone,
    revoked_at timestamp(6) with time zone,
    primary key (id),
    constraint api_token_one1 unique (token_hash),
    constraint api_token_of1 foreign key (depot) references depot (depot)
);

create table api_token_scope (
    token bigint not null,
    scope varchar(40) not null,
    primary key (token, scope),
    constraint api_token_scope_of1 foreign key (token) references api_token (id)
);

-- What a request with an idempotency key was answered; status 0 while it is being answered.
create table api_answer (
    token bigint not null,
    request_key varchar(100) not null,
    request_hash varchar(64) not null,
    status integer not null,
    answer varchar(1000000),
    made_at timestamp(6) with time zone not null,
    primary key (token, request_key),
    constraint api_answer_of1 foreign key (token) references api_token (id)
);
create index api_answer_age on api_answer (made_at);

-- Who changed what, when. Rows are only ever added.
create sequence audit_entry_seq start with 1 increment by 1000;
create table audit_entry (
    id bigint not null,
    happened_at timestamp(6) with time zone not null,
    who varchar(100) not null,
    what varchar(60) not null,
    subject varchar(300) not null,
    value_before varchar(10000) not null,
    value_after varchar(10000) not null,
    primary key (id)
);
create index audit_entry_time on audit_entry (happened_at, id);
