-- Orders as the buyer works with them: the day the supplier confirmed, pieces that have come so far, the price confirmed.
alter table purchase_line add column confirmed_on date;
alter table purchase_line add column received double precision default 0 not null;
alter table purchase_line add column price numeric(17, 4);

-- What it costs and takes to send parts from one depot to another.
create sequence transfer_seq start with 1 increment by 1000;
create table transfer (
    id bigint not null,
    from_depot varchar(60) not null,
    to_depot varchar(60) not null,
    cost numeric(17, 4) not null,
    days integer not null,
    primary key (id),
    constraint transfer_one1 unique (from_depot, to_depot),
    constraint transfer_of2 foreign key (from_depot) references depot (depot),
    constraint transfer_of3 foreign key (to_depot) references depot (depot),
    constraint transfer_fits4 check (cost >= 0 and days >= 0 and from_depot <> to_depot)
);

-- What the buyer has pressed, under the key of its form: a form that is sent twice is one order, one receipt, one change.
create table order_action (
    form_key varchar(100) not null,
    result varchar(2000) not null,
    done_at timestamp(6) with time zone not null,
    done_by varchar(100) not null,
    primary key (form_key)
);

-- Buyers take turns at this row; it gives the next number of the site's own orders.
create table order_series (
    id integer not null,
    next_number bigint not null,
    primary key (id)
);
insert into order_series (id, next_number) values (1, 1);

-- Transfers between depots on their way: an order line at the depot that takes, and here who sent it.
create table transfer_sent (
    order_number varchar(60) not null,
    from_depot varchar(60) not null,
    primary key (order_number),
    constraint transfer_sent_of1 foreign key (from_depot) references depot (depot)
);
