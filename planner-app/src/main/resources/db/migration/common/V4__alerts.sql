-- What people are told: alerts and their history, mail that waits to be sent, secret calendar addresses.

create sequence alert_seq start with 1 increment by 1000;
create table alert (
    id bigint not null,
    depot varchar(60),
    truck varchar(60),
    cylinder integer,
    rule varchar(20) not null,
    subject varchar(300),
    truck_key varchar(60) not null,
    cylinder_key integer not null,
    subject_key varchar(300) not null,
    open_key bigint not null,
    state varchar(10) not null,
    action varchar(10),
    evidence varchar(2000) not null,
    limit_words varchar(2000) not null,
    limit_source varchar(60) not null,
    due_on date not null,
    visit_week varchar(8),
    raised_at timestamp(6) with time zone not null,
    seen_at timestamp(6) with time zone,
    muted_until date,
    muted_why varchar(2000),
    cleared_at timestamp(6) with time zone,
    cleared_why varchar(2000),
    told varchar(10),
    primary key (id),
    constraint alert_one1 unique (truck_key, cylinder_key, rule, subject_key, open_key),
    constraint alert_of1 foreign key (depot) references depot (depot),
    constraint alert_of2 foreign key (truck) references truck (truck),
    constraint alert_fits1 check (state in ('RAISED', 'SEEN', 'PLANNED', 'MUTED', 'CLEARED')),
    constraint alert_fits2 check (truck_key = coalesce(truck, '') and cylinder_key = coalesce(cylinder, 0)
        and subject_key = coalesce(subject, '')),
    constraint alert_fits3 check (open_key = case when state = 'CLEARED' then id else 0 end),
    constraint alert_fits4 check ((state = 'MUTED') = (muted_until is not null)),
    constraint alert_fits5 check ((muted_until is null) = (muted_why is null)),
    constraint alert_fits6 check ((state = 'CLEARED') = (cleared_at is not null)),
    constraint alert_fits7 check ((cleared_at is null) = (cleared_why is null)),
    constraint alert_fits8 check ((state = 'PLANNED') = (visit_week is not null)),
    constraint alert_fits9 check (rule = 'JOB' or (truck is not null and depot is not null and action is not null))
);
create index alert_open on alert (depot, open_key, id);

create sequence alert_event_seq start with 1 increment by 1000;
create table alert_event (
    id bigint not null,
    alert bigint not null,
    happened_at timestamp(6) with time zone not null,
    who varchar(60) not null,
    from_state varchar(10),
    to_state varchar(10) not null,
    why varchar(2000) not null,
    primary key (id),
    constraint alert_event_of1 foreign key (alert) references alert (id)
);

create sequence mail_recipient_seq start with 1 increment by 1000;
create table mail_recipient (
    id bigint not null,
    depot varchar(60),
    depot_key varchar(60) not null,
    reader varchar(20) not null,
    address varchar(254) not null,
    primary key (id),
    constraint mail_recipient_one1 unique (depot_key, reader, address),
    constraint mail_recipient_of1 foreign key (depot) references depot (depot),
    constraint mail_recipient_fits1 check (depot_key = coalesce(depot, '')),
    constraint mail_recipient_fits2 check (reader in ('MANAGER', 'BUYER', 'MECHANIC', 'ADMINISTRATOR'))
);

create sequence mail_message_seq start with 1 increment by 1000;
create table mail_message (
    id bigint not null,
    message_key varchar(500) not null,
    message_id varchar(200) not null,
    recipient varchar(254) not null,
    subject varchar(300) not null,
    body_text varchar(1000000) not null,
    body_html varchar(1000000) not null,
    state varchar(10) not null,
    attempts integer not null,
    queued_at timestamp(6) with time zone not null,
    next_at timestamp(6) with time zone not null,
    sent_at timestamp(6) with time zone,
    last_error varchar(2000),
    primary key (id),
    constraint mail_message_one1 unique (message_key),
    constraint mail_message_fits1 check (state in ('WAITING', 'SENDING', 'SENT', 'REFUSED')),
    constraint mail_message_fits2 check ((state = 'SENT') = (sent_at is not null)),
    constraint mail_message_fits3 check (attempts >= 0)
);
create index mail_message_next on mail_message (state, next_at);

-- Content in base64, as it goes into the mail: one type of column on both databases.
create sequence mail_attachment_seq start with 1 increment by 1000;
create table mail_attachment (
    id bigint not null,
    message bigint not null,
    name varchar(200) not null,
    media_type varchar(100) not null,
    content varchar(10000000) not null,
    primary key (id),
    constraint mail_attachment_one1 unique (message, name),
    constraint mail_attachment_of1 foreign key (message) references mail_message (id)
);

create sequence calendar_feed_seq start with 1 increment by 1000;
create table calendar_feed (
    id bigint not null,
    depot varchar(60) not null,
    token_hash varchar(64) not null,
    made_at timestamp(6) with time zone not null,
    revoked_at timestamp(6) with time zone,
    primary key (id),
    constraint calendar_feed_one1 unique (token_hash),
    constraint calendar_feed_of1 foreign key (depot) references depot (depot)
);
